import type { Migration } from '.';
import { change, each, nulls, type Raw } from './raw';

/**
 * Version 3 knows more of ducts, hoods, gaps, troughs and of the data sheet, and which rule of light, spacing and heat counts.
 * A duct that was capped had the cap that its loss was counted with; the aisle is what was wanted before.
 */
export const toVersion3: Migration = (raw) => ({
  ...raw,
  version: 3,
  air: change(raw.air, (air) => ({ ...air, ...nulls('interlocked', 'hoodWaived') })),
  codes: change(raw.codes, (codes) => ({ ...codes, spacing: 'strictest', light: 'strictest', heatTable: 'strictest', load: 'strictest' })),
  settings: change(raw.settings, (settings) => ({ ...settings, aisleWidth: 914.4 })),
  demand: change(raw.demand, (demand) => ({ ...demand, restMinutes: null, scrapSeconds: null })),
  machines: each(raw.machines, (machine) => ({ ...machine, hookUp: change(machine.hookUp, (hookUp) => ({ ...hookUp, ...HOOK_UP })) })),
  room: change(raw.room, (room) => ({ ...room, floorDrains: each(room.floorDrains, addVent) })),
  supply: change(raw.supply, (supply) => ({ ...supply, toGroundV: null })),
  things: each(raw.things, (thing) => ({
    ...thing,
    basins: change(thing.basins, (basins) => ({ ...basins, ...nulls('waste', 'sanitizing') })),
  })),
  tables: each(raw.tables, (table) => ({ ...table, fittings: each(table.fittings, addTrough) })),
  hoods: each(raw.hoods, (hood) => ({ ...hood, cavityAir: null })),
  runs: each(raw.runs, (run) => ({ ...run, duct: change(run.duct, changeDuct) })),
  sheets: each(raw.sheets, toSheet2),
});

/** A data sheet of version 1 of its own file as well. */
export const toSheet2 = (sheet: Raw): Raw => ({
  ...sheet,
  idle: null,
  vent: change(sheet.vent, (vent) => (vent.kind === 'recovery' ? { ...vent, ...nulls('listedCondensing', 'sensible', 'latent') } : vent)),
});

const HOOK_UP = nulls('drainMaterial', 'wasteTrapped', 'backflow', 'sealed');

const addVent = (drain: Raw): Raw => ({ ...drain, waste: change(drain.waste, (waste) => ({ ...waste, vented: null })) });

function addTrough(fitting: Raw): Raw {
  if (fitting.kind === 'scrap') return { ...fitting, ...nulls('troughDepth', 'troughSlope') };
  return fitting.kind === 'sink' ? { ...fitting, rackSlide: null } : fitting;
}

const changeDuct = ({ capped, ...duct }: Raw): Raw => ({
  ...duct,
  cap: capped === true ? 'well-spaced' : capped === false ? 'none' : capped,
  ...nulls('bendMake', 'insulationKind', 'sealed', 'aboveGround', 'aboveRoof'),
});
