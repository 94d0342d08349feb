import type { DataSheet } from '../../catalog';
import type { Recipe } from '../edit';
import type { Column, Fitting, FloorDrain, Hood, Machine, Opening, Run, Stub, Table, Thing } from '../planSchema';

/** Each adds one whole item; its id must be free (see `createId`). */
export const addMachine =
  (machine: Machine): Recipe =>
  (draft) =>
    void draft.machines.push(machine);

/** A table free in the room or joined to a machine, as its place says. */
export const addTable =
  (table: Table): Recipe =>
  (draft) =>
    void draft.tables.push(table);

export const addThing =
  (thing: Thing): Recipe =>
  (draft) =>
    void draft.things.push(thing);

export const addHood =
  (hood: Hood): Recipe =>
  (draft) =>
    void draft.hoods.push(hood);

export const addRun =
  (run: Run): Recipe =>
  (draft) =>
    void draft.runs.push(run);

export const addOpening =
  (opening: Opening): Recipe =>
  (draft) =>
    void draft.room.openings.push(opening);

export const addColumn =
  (column: Column): Recipe =>
  (draft) =>
    void draft.room.columns.push(column);

export const addFloorDrain =
  (drain: FloorDrain): Recipe =>
  (draft) =>
    void draft.room.floorDrains.push(drain);

export const addStub =
  (stub: Stub): Recipe =>
  (draft) =>
    void draft.room.stubs.push(stub);

/** A data sheet of the user's own. */
export const addSheet =
  (sheet: DataSheet): Recipe =>
  (draft) =>
    void draft.sheets.push(sheet);

/** A fitting on a table. */
export const addFitting =
  (table: string, fitting: Fitting): Recipe =>
  (draft) =>
    void draft.tables.find((item) => item.id === table)?.fittings.push(fitting);
