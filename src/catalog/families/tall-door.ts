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
  signals,
  variant,
  water,
} from '../shared/familyParts';

const WIDTH = 762;

/** Its place in the catalog. */
export const order = 40;

/** Doors high enough for sheet pans on edge. Generic, invented figures. */
export const sheet: DataSheet = {
  id: 'tall-door',
  name: 'Tall door, hot-water sanitising, booster built in',
  summary: 'About 27 in of clear opening for 18 × 26 in sheet pans, with longer cycles to choose; it needs the height above and a hood.',
  width: WIDTH,
  depth: 737,
  height: 1676,
  doors: ['left', 'right', 'front'],
  rackLine: { left: 368.5, right: 368.5, front: 381 },
  deckHeight: DECK_HEIGHT,
  // 27 in: common practice.
  clearOpening: 685.8,
  doorLiftHeight: 2019,
  joint: JOINT,
  controls: lowControls(WIDTH),
  controlsChange: 'factory',
  connections: [
    water('hot-water', WIDTH, 'Hot water, ¾ in, 140 °F or more at the valve, with a shut-off, a strainer and a pressure gauge.'),
    drain(),
    power(WIDTH),
    ...signals(WIDTH),
  ],
  clearances: CLEARANCES,
  sanitizing: 'hot-water',
  waterFeed: 'hot',
  cycle: { washS: 100, rinseS: 14, dwellS: 6, loadS: LOAD_S },
  // 150 °F wash and 180 °F rinse: NAC 446.355; supply of 140 °F: UFC 4-750-01NF 6-2.3.2.
  temperatures: { washC: 65.56, rinseC: HOT_RINSE_C, supplyC: 60 },
  rinseKind: 'dual-temperature',
  rinsePressure: RINSE_PRESSURE,
  tank: { volume: 0.038, heater: 4500 },
  booster: 12000,
  drainFlow: DRAIN_FLOW,
  idle: 545,
  thermometers: true,
  rinseWaterL: 3.3,
  electrical: [variant(208, 3, 18), variant(240, 3, 18), variant(480, 3, 18)],
  vent: { kind: 'hood' },
  conversion: conversion(true),
};
