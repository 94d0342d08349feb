import type { DataSheet } from '../../catalog';
import type { Column, FloorDrain, Hood, Machine, Opening, Plan, Run, Stub, Table, Thing } from '../../plan';

/** What was copied: plan data with the ids that it had; pasting gives new ids. */
export interface Clip {
  readonly machines: readonly Machine[];
  readonly tables: readonly Table[];
  readonly things: readonly Thing[];
  readonly hoods: readonly Hood[];
  readonly runs: readonly Run[];
  readonly columns: readonly Column[];
  readonly floorDrains: readonly FloorDrain[];
  readonly stubs: readonly Stub[];
  readonly openings: readonly Opening[];
  /** Data sheets of the user's own that the machines need. */
  readonly sheets: readonly DataSheet[];
  /** The plan that it was copied from: a joined table whose machine stays behind becomes free where it stood there. */
  readonly source: Plan;
  /** How often it was pasted, so that each copy lands a step beside the last. */
  readonly pasted: number;
}
