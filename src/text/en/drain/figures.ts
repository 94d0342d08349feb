import type { BranchFixtureUnitsMessages } from '../../../topics/drain/figures/branch-fixture-units';
import type { DrainCapacityMessages } from '../../../topics/drain/figures/drain-capacity';
import type { DrainDistanceMessages } from '../../../topics/drain/figures/drain-distance';
import type { DrainSpeedMessages } from '../../../topics/drain/figures/drain-speed';
import type { DrainUnitsMessages } from '../../../topics/drain/figures/drain-units';
import type { DumpStorageMessages } from '../../../topics/drain/figures/dump-storage';
import type { GreaseInterceptorMessages } from '../../../topics/drain/figures/grease-interceptor';
import type { DrainsMessages } from '../../../topics/drain/figures/support/drains';
import type { LeastWasteAirGapMessages } from '../../../topics/drain/figures/waste-air-gap';
import type { Wording } from '../../wording';

type FigureMessages = DrainsMessages &
  LeastWasteAirGapMessages &
  DrainDistanceMessages &
  DrainCapacityMessages &
  DrainSpeedMessages &
  DrainUnitsMessages &
  BranchFixtureUnitsMessages &
  DumpStorageMessages &
  GreaseInterceptorMessages;

export const figures: Wording<FigureMessages> = {
  'drains/ask-waste': () => 'way in which the waste is connected',
  'drains/ask-drain': () => 'floor drain or floor sink',
  'drains/ask-flow': () => 'flow of the drain while the machine empties',
  'drains/ask-drain-bore': () => 'inside diameter of the floor drain’s pipe',
  'drains/ask-drain-slope': () => 'fall of the floor drain’s pipe',
  'drains/ask-direct-bore': () => 'inside diameter of the drain that takes the machine’s waste',
  'drains/ask-direct-slope': () => 'fall of that drain',
  'drains/material-not-said': () =>
    'What the drains are made of is not said: as old pipe, Manning’s n 0.015, which carries least; smooth pipe carries up to two thirds more.',
  'drains/roughness': ({ material }) => ROUGHNESS[material],

  'waste-air-gap/as-outlet': () => 'Where the waste is indirect; the pipe is taken to be as wide as the outlet.',
  'waste-air-gap/by-pipe': () => 'By the waste pipe, or the outlet where that is wider.',

  'drain-distance/near': () =>
    'Within 5 ft: a direct connection is possible where law allows it and the drain is trapped and vented; else an air gap.',
  'drain-distance/far': () => 'More than 5 ft: no direct connection; the waste is indirect, through an air gap.',

  'drain-capacity/of-floor-drain': () => 'Over an air gap the pipe of the nearest floor drain carries the waste on.',
  'drain-capacity/half-full': () => 'Sanitary drains are sized half full.',
  'drain-capacity/full': () => 'Twice as much, and no air left in the pipe.',

  'drain-speed/slow': () =>
    'Slower than 2 ft/s, the speed at which a drain scours itself clean: expect it to be cleaned out more often, or lay it steeper.',
  'drain-speed/scours': () => '2 ft/s or more: it scours itself clean.',

  'drain-units/ipc': () => 'International code: 2 units a gallon a minute.',
  'drain-units/upc': () => 'Uniform code: 2 units a gallon a minute, from memory.',
  'drain-units/chicago': () => 'Chicago: 1 unit a gallon a minute.',
  'drain-units/municipal-old': () =>
    'An old city code, by its table: of its rows for such a machine, any or by what the tank holds, the one that counts more.',
  'drain-units/upc-intermittent': () =>
    'Beside it, from memory: as a flow that only comes and goes the Uniform code counts 1 unit to 7.5 gpm and 2 units to 15 gpm.',
  'drain-units/cubic-foot': () =>
    'Beside it: by the first definition a unit is a cubic foot a minute, 7.5 gpm, as the code of Redwood City still has it.',
  'drain-units/as-continuous': () =>
    'Counted as a continuous or semi-continuous flow; whether a machine that empties now and then is one, the local authority says.',
  'drain-units/none-counts-more': () => 'Governs: none counts more.',
  'drain-units/own-choice': () => 'Governs: the plan’s own choice of code.',

  'branch-fixture-units/ipc': () => 'International code: a machine by its flow, a sink by a trap of 2 in, from memory.',
  'branch-fixture-units/upc': () => 'Uniform code: a machine by its flow, from memory, a sink as a commercial one with food waste.',
  'branch-fixture-units/chicago': () => 'Chicago: a machine by its flow, the rest by other tables, as its own is not at hand.',
  'branch-fixture-units/municipal-old': () =>
    'An old city code, by its table; a sink in a table has no row there, and counts as the Uniform code has it.',
  'branch-fixture-units/sinks-counted': () => 'A sink that is not said to be connected directly is counted.',
  'branch-fixture-units/branch-may-take': ({ units }) => `A horizontal branch as wide as the drain’s pipe may take ${units}.`,

  'dump-storage/no-tank': () => 'No tank: the water of one rack is let out at once.',
  'dump-storage/whole-tank': () => 'The whole tank is let out at once.',
  'dump-storage/full-pipe': () => 'The pipe below the floor sink runs full, and nothing else drains into it meanwhile.',

  'grease-interceptor/one-city': () =>
    'One city’s formula, with a dish machine: other places count otherwise, and some keep dish machines out of the interceptor. The local authority sizes it.',
};

const ROUGHNESS: Readonly<Record<DrainsMessages['drains/roughness']['material'], string>> = {
  plastic: 'Manning’s n of smooth plastic, 0.009.',
  'cast-iron': 'Manning’s n of cast iron, 0.013.',
  old: 'Manning’s n of old pipe, 0.015, as NSPC Appendix K takes it.',
};
