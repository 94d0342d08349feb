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

const WIDTH = 724;

/** Its place in the catalog. */
export const order = 20;

/** Each wash begins with the last rinse's water; the rinse waits for the booster. Generic, invented figures. */
export const sheet: DataSheet = {
  id: 'fresh-water-hot-water',
  name: 'Fresh-water, hot-water sanitising, booster built in',
  summary:
    'Fresh water for each rack, single- or three-phase; when the supply is cool the rinse waits for the booster, so the cycle stretches. It needs a hood.',
  width: WIDTH,
  depth: 699,
  height: 1448,
  doors: ['left', 'right', 'front'],
  rackLine: { left: 349.5, right: 349.5, front: 362 },
  deckHeight: DECK_HEIGHT,
  clearOpening: STANDARD_OPENING,
  doorLiftHeight: 1854,
  joint: JOINT,
  controls: lowControls(WIDTH).map((position) => narrow(position)),
  controlsChange: 'on-site',
  connections: [
    water('hot-water', WIDTH, 'Hot water, ¾ in, 110 °F or more at the valve; below 140 °F the rinse waits for the booster.'),
    drain(),
    power(WIDTH),
    ...signals(WIDTH),
  ],
  clearances: CLEARANCES,
  sanitizing: 'hot-water',
  waterFeed: 'hot',
  cycle: { washS: 44, rinseS: 12, dwellS: 8, loadS: LOAD_S },
  // 150 °F wash and 180 °F rinse: NAC 446.355; supply of 110 °F (rise of 70 °F in the booster).
  temperatures: { washC: 65.56, rinseC: HOT_RINSE_C, supplyC: 43.33 },
  rinseKind: 'dual-temperature',
  rinsePressure: RINSE_PRESSURE,
  tank: null,
  booster: 12000,
  drainFlow: DRAIN_FLOW,
  idle: 450,
  thermometers: true,
  rinseWaterL: 3.3,
  electrical: [variant(208, 1, 12), variant(208, 3, 12), variant(240, 1, 12), variant(240, 3, 12)],
  vent: { kind: 'hood' },
  conversion: conversion(false),
};

/** The slimmer body leaves 80 mm for the post. */
function narrow(position: DataSheet['controls'][number]): DataSheet['controls'][number] {
  return position.id === 'front-left' ? { ...position, to: 85 } : { ...position, from: WIDTH - 85 };
}
