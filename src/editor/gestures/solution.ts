import type { Point } from '../../geometry';
import type { Recipe } from '../../plan';
import type { Scene } from '../../scene';
import type { Guide, Readout } from '../types';
import type { Aim } from './aim';
import type { Hold } from './gesture';

/** A drag as far as it has come: from where to where, over which scene, held by what. */
export interface Pull {
  /** The scene as it was when the drag began. */
  readonly scene: Scene;
  readonly from: Point;
  readonly to: Point;
  readonly aim: Aim;
  readonly hold: Hold | null;
}

/** What a drag would do. */
export interface Solution {
  /** For people: "Move the machine". */
  readonly label: string;
  readonly recipe: Recipe;
  readonly guides?: readonly Guide[];
  readonly readouts?: readonly Readout[];
  /** The door that holds a table's end after this move. */
  readonly hold?: Hold | null;
}
