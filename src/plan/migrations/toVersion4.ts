import type { Migration } from '.';
import { change, each, nulls, type Raw } from './raw';

/**
 * Version 4 knows covers and inlets of a trough, how a sink in a table empties, what is sealed of sinks and shelving, the heater of
 * a sanitising bowl, the air gap of a machine's water, where its booster stands, and its thermometers. A plan of version 3 says
 * nothing of them: all are unknown.
 */
export const toVersion4: Migration = (raw) => ({
  ...raw,
  version: 4,
  machines: each(raw.machines, (machine) => ({ ...machine, hookUp: change(machine.hookUp, (hookUp) => ({ ...hookUp, ...HOOK_UP })) })),
  tables: each(raw.tables, (table) => ({ ...table, fittings: each(table.fittings, changeFitting) })),
  things: each(raw.things, (thing) => ({
    ...thing,
    sealed: null,
    basins: change(thing.basins, (basins) => ({ ...basins, heater: null })),
  })),
  sheets: each(raw.sheets, toSheet3),
});

/** A data sheet of version 2 of its own file as well. */
export const toSheet3 = (sheet: Raw): Raw => ({ ...sheet, thermometers: null });

const HOOK_UP = nulls('supplyGap', 'boosterPlace', 'boosterWay', 'boosterBelow', 'boosterOffWall');

function changeFitting(fitting: Raw): Raw {
  if (fitting.kind === 'scrap') return { ...fitting, ...nulls('troughCovers', 'troughInlets') };
  return fitting.kind === 'sink' ? { ...fitting, waste: null } : fitting;
}
