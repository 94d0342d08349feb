import type { Column, FloorDrain, Hood, Machine, Opening, Run, Stub, Table, Thing } from '../../plan';

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
  /** How often it was pasted, so that each copy lands a step beside the last. */
  readonly pasted: number;
}
