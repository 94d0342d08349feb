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
export const order = 60;

/** Vapour warms the cold feed instead of leaving through a hood. Generic, invented figures. */
export const sheet: DataSheet = {
  id: 'heat-recovery',
  name: 'Ventless heat recovery, hot-water sanitising',
  summary:
    'Cold-water feed and no hood: a box behind it takes the heat back during an extra hold at the end of the cycle; the first heat-up is longer.',
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
    water('cold-water', WIDTH, 'Cold water, ¾ in, with a shut-off, a strainer and a pressure gauge; a hot feed defeats the heat recovery.'),
    drain(),
    power(WIDTH),
    ...signals(WIDTH),
  ],
  clearances: { ...CLEARANCES, back: 120 },
  sanitizing: 'hot-water',
  waterFeed: 'cold',
  cycle: { washS: 43, rinseS: 11, dwellS: 33, loadS: LOAD_S },
  // 150 °F wash and 180 °F rinse: NAC 446.355; cold feed of 40 °F or more.
  temperatures: { washC: 65.56, rinseC: HOT_RINSE_C, supplyC: 4.44 },
  rinseKind: 'dual-temperature',
  rinsePressure: RINSE_PRESSURE,
  tank: { volume: 0.026, heater: 3000 },
  booster: 12000,
  drainFlow: DRAIN_FLOW,
  idle: 540,
  thermometers: true,
  rinseWaterL: 2.7,
  electrical: [variant(208, 3, 16.8), variant(240, 3, 16.8), variant(480, 3, 16.8)],
  vent: {
    kind: 'recovery',
    recovered: 0.45,
    listedCondensing: true,
    sensible: 1500,
    latent: 700,
    box: { x: 60, y: -120, width: 617, depth: 120, zFrom: 1000, zTo: 1960 },
  },
  conversion: conversion(true),
};
