import type { DataSheet } from '../dataSheet';
import { conversion } from '../shared/conversion';
import {
  CLEARANCES,
  DECK_HEIGHT,
  DRAIN_FLOW,
  drain,
  HOT_RINSE_C,
  highControls,
  JOINT,
  LOAD_S,
  power,
  RINSE_PRESSURE,
  STANDARD_OPENING,
  signals,
  variant,
  water,
} from '../shared/familyParts';

const WIDTH = 737;
const DUCT = 177.8;
/** The vent stack stands on the fixed top at the back; the doors rise before it. */
const COLLAR_HEIGHT = 1930;

/** Its place in the catalog. */
export const order = 50;

/** Its own fan and run instead of a hood. Generic, invented figures. */
export const sheet: DataSheet = {
  id: 'direct-vent',
  name: 'Direct vent, hot-water sanitising, booster built in',
  summary: 'Its own fan and run instead of a hood, with a limited equivalent length; the vent is set on top after the machine is in place.',
  width: WIDTH,
  depth: 711,
  height: 1880,
  doors: ['left', 'right', 'front'],
  rackLine: { left: 355.5, right: 355.5, front: 368.5 },
  deckHeight: DECK_HEIGHT,
  clearOpening: STANDARD_OPENING,
  doorLiftHeight: COLLAR_HEIGHT,
  joint: JOINT,
  controls: highControls(WIDTH),
  controlsChange: 'factory',
  connections: [
    water('hot-water', WIDTH, 'Hot water, ¾ in, 140 °F or more at the valve, with a shut-off, a strainer and a pressure gauge.'),
    drain(),
    power(WIDTH),
    ...signals(WIDTH),
    {
      id: 'collar',
      kind: 'collar',
      x: WIDTH / 2,
      y: 150,
      z: COLLAR_HEIGHT,
      size: DUCT,
      note: 'Collar for 7 in duct, set on top after the machine is in place. Corrosion-proof duct, joints sealed, falling back to the collar.',
    },
  ],
  clearances: CLEARANCES,
  sanitizing: 'hot-water',
  waterFeed: 'hot',
  cycle: { washS: 43, rinseS: 11, dwellS: 9, loadS: LOAD_S },
  // 150 °F wash and 180 °F rinse: NAC 446.355; supply of 140 °F: UFC 4-750-01NF 6-2.3.2.
  temperatures: { washC: 65.56, rinseC: HOT_RINSE_C, supplyC: 60 },
  rinseKind: 'dual-temperature',
  rinsePressure: RINSE_PRESSURE,
  tank: { volume: 0.03, heater: 3000 },
  booster: 9000,
  drainFlow: DRAIN_FLOW,
  idle: 520,
  thermometers: true,
  rinseWaterL: 2.8,
  electrical: [variant(208, 3, 15.2), variant(240, 3, 15.2), variant(480, 3, 15.2)],
  // At most 50 ft of run, each elbow 10 ft of it, about 10 ft of cord with the fan: common practice.
  vent: {
    kind: 'direct',
    maxEquivalentLength: 15_240,
    elbowAllowance: 3048,
    cordLength: 3048,
    ductDiameter: DUCT,
    airflow: 0.2,
    fanCurve: [
      { airflow: 0, pressure: 300 },
      { airflow: 0.06, pressure: 292 },
      { airflow: 0.12, pressure: 268 },
      { airflow: 0.18, pressure: 222 },
      { airflow: 0.24, pressure: 150 },
      { airflow: 0.28, pressure: 75 },
      { airflow: 0.31, pressure: 0 },
    ],
  },
  conversion: conversion(false),
};
