import type { DataSheet } from '../dataSheet';
import { conversion } from '../shared/conversion';
import {
  CLEARANCES,
  DECK_HEIGHT,
  DRAIN_FLOW,
  drain,
  JOINT,
  LOAD_S,
  lowControls,
  power,
  STANDARD_OPENING,
  signals,
  variant,
  water,
} from '../shared/familyParts';

const WIDTH = 737;

/** Its place in the catalog. */
export const order = 30;

/** No booster: a sanitiser is fed into the final rinse. Generic, invented figures. */
export const sheet: DataSheet = {
  id: 'chemical-sanitising',
  name: 'Chemical sanitising, low temperature',
  summary:
    'No booster: a feeder doses sanitiser into a rinse of about 120 °F, so the load on power and air is small. Local code says whether it may go without a hood.',
  width: WIDTH,
  depth: 711,
  height: 1473,
  doors: ['left', 'right', 'front'],
  rackLine: { left: 355.5, right: 355.5, front: 368.5 },
  deckHeight: DECK_HEIGHT,
  clearOpening: STANDARD_OPENING,
  doorLiftHeight: 1867,
  joint: JOINT,
  controls: lowControls(WIDTH),
  controlsChange: 'on-site',
  connections: [
    water(
      'hot-water',
      WIDTH,
      'Hot water, ¾ in, 120 °F or more at the valve. Chemicals: gloves and goggles, never two kinds in one vessel.',
    ),
    drain(),
    power(WIDTH),
    ...signals(WIDTH),
  ],
  clearances: CLEARANCES,
  sanitizing: 'chemical',
  waterFeed: 'hot',
  cycle: { washS: 45, rinseS: 25, dwellS: 10, loadS: LOAD_S },
  // Wash water of 120 °F: Army QM 3510.
  temperatures: { washC: 48.89, rinseC: 48.89, supplyC: 48.89 },
  rinseKind: 'single-temperature',
  rinsePressure: null,
  tank: null,
  booster: null,
  drainFlow: DRAIN_FLOW,
  idle: 480,
  thermometers: true,
  rinseWaterL: 4.4,
  electrical: [variant(115, 1, 1.8), variant(208, 1, 4.2), variant(208, 3, 4.2)],
  vent: { kind: 'hood' },
  conversion: conversion(true),
};
