import type { DataSheet } from '../dataSheet';
import { conversion } from '../shared/conversion';
import {
  CLEARANCES,
  DECK_HEIGHT,
  DRAIN_FLOW,
  drain,
  HOT_RINSE_C,
  JOINT,
  LOAD_S,
  lowControls,
  power,
  RINSE_PRESSURE,
  STANDARD_OPENING,
  signals,
  variant,
  water,
} from '../shared/familyParts';

const WIDTH = 737;

/** Its place in the catalog. */
export const order = 10;

/** Wash water stays in a heated tank; the final rinse comes fresh from a booster. Generic, invented figures. */
export const sheet: DataSheet = {
  id: 'recirculating-hot-water',
  name: 'Recirculating, hot-water sanitising, booster built in',
  summary: 'Heated wash tank and a final rinse of 180 °F or more from its own booster; it needs a hood.',
  width: WIDTH,
  depth: 711,
  height: 1473,
  doors: ['left', 'right', 'front'],
  rackLine: { left: 355.5, right: 355.5, front: 368.5 },
  deckHeight: DECK_HEIGHT,
  clearOpening: STANDARD_OPENING,
  doorLiftHeight: 1880,
  joint: JOINT,
  controls: lowControls(WIDTH),
  controlsChange: 'on-site',
  connections: [
    water('hot-water', WIDTH, 'Hot water, ¾ in, 140 °F or more at the valve, with a shut-off, a strainer and a pressure gauge.'),
    drain(),
    power(WIDTH),
    ...signals(WIDTH),
  ],
  clearances: CLEARANCES,
  sanitizing: 'hot-water',
  waterFeed: 'hot',
  cycle: { washS: 43, rinseS: 11, dwellS: 3, loadS: LOAD_S },
  // 150 °F wash and 180 °F rinse: NAC 446.355; supply of 140 °F: UFC 4-750-01NF 6-2.3.2.
  temperatures: { washC: 65.56, rinseC: HOT_RINSE_C, supplyC: 60 },
  rinseKind: 'dual-temperature',
  rinsePressure: RINSE_PRESSURE,
  tank: { volume: 0.03, heater: 3000 },
  booster: 9000,
  drainFlow: DRAIN_FLOW,
  idle: 530,
  thermometers: true,
  rinseWaterL: 2.8,
  electrical: [variant(208, 3, 14.5), variant(208, 1, 14.5), variant(240, 3, 14.5), variant(480, 3, 14.5)],
  vent: { kind: 'hood' },
  conversion: conversion(true),
};
