import type { Migration } from '.';
import { change, each, nulls, type Raw } from './raw';

/**
 * Version 2 knows of the building's services and of how things are made: air, finishes, pipes, tariff, codes, hook-ups,
 * ducts, rims and legs, and of more on the data sheet. A plan of version 1 says nothing of them: all are unknown.
 */
export const toVersion2: Migration = (raw) => ({
  ...raw,
  version: 2,
  ...PARTS,
  room: change(raw.room, (room) => ({ ...room, floorDrains: each(room.floorDrains, (drain) => ({ ...drain, waste: WASTE })) })),
  machines: each(raw.machines, (machine) => ({ ...machine, hookUp: HOOK_UP })),
  tables: each(raw.tables, (table) => ({ ...table, make: MAKE })),
  things: each(raw.things, (thing) => ({ ...thing, clearBelow: null, basins: null })),
  hoods: each(raw.hoods, (hood) => ({ ...hood, exhaust: null })),
  runs: each(raw.runs, (run) => ({ ...run, duct: DUCT })),
  demand: change(raw.demand, (demand) => ({ ...demand, hoursPerDay: null, daysPerYear: null, rackMass: null })),
  sheets: each(raw.sheets, addPerformance),
});

const addPerformance = (sheet: Raw): Raw => ({
  ...sheet,
  rinseKind: 'dual-temperature',
  rinsePressure: null,
  tank: null,
  booster: null,
  drainFlow: null,
  vent: change(sheet.vent, (vent) => {
    if (vent.kind === 'direct') return { ...vent, airflow: null, fanCurve: [] };
    return vent.kind === 'recovery' ? { ...vent, recovered: null } : vent;
  }),
});

const WASTE = nulls('trapped', 'bore', 'slope', 'volume');
const MAKE = nulls('rim', 'scupper', 'clearBelow', 'sealed');
const DUCT = {
  ...nulls('material', 'sides', 'airflow', 'bendRadius', 'insulation', 'capped'),
  ...nulls('exhaustC', 'exhaustHumidity', 'lowPointDrain', 'intakeDistance', 'lineDistance'),
};
const HOOK_UP: Raw = {
  ...nulls('water', 'waste', 'airGap', 'drainBore', 'drainSlope', 'wire', 'markedFor75C', 'breakerA', 'wireWay'),
  ...nulls('ventSignal', 'rinseAidSignal', 'detergentSignal', 'clearBelow'),
  plateRecord: [],
};

const PARTS: Raw = {
  air: nulls(
    'roomC',
    'roomHumidity',
    'makeUp',
    'makeUpC',
    'makeUpHumidity',
    'roomExhaust',
    'outdoorC',
    'ductAirC',
    'wallConductance',
    'ceilingConductance',
    'elevation',
  ),
  finish: nulls('light', 'ceilingWashable', 'floorCoved', 'floorSlope', 'fixedWalls'),
  pipes: nulls('staticPressure', 'hardness', 'material', 'bore', 'heaterPower', 'storage'),
  tariff: { currency: '', ...nulls('electricity', 'gas', 'water', 'waterHeatedBy', 'heaterEfficiency') },
  codes: {
    exhaust: 'strictest',
    rinsePressure: 'strictest',
    drainUnits: 'strictest',
    handSink: 'strictest',
    handSinkWater: 'strictest',
  },
};
