import { type Bounds, isNearBounds, obstacleBody, type Polygon } from '../geometry';
import { hasSameFields } from './hasSameFields';
import { readDerived } from './rememberReads';
import type { Line, Scene, Solid } from './types';

/** The bodies that come into a box, in the plan: what moves elsewhere does not count as read. */
export const solidsIn = (scene: Scene, box: Bounds): readonly Solid[] =>
  readDerived(scene, ({ solids }) => solids.filter(({ pieces }) => pieces.some((piece) => isIn(piece, box))), isSameList);

const isIn = (piece: Polygon, box: Bounds) => isNearBounds(obstacleBody(piece).bounds, box);

/** A line but for where its ware goes. */
export type Stance = Omit<Line, 'stations' | 'ways'>;

/** The lines but for their stations and ways: a shelf or a cart that moves does not count as read. */
export const stancesOf = (scene: Scene): readonly Stance[] =>
  readDerived<readonly Stance[]>(
    scene,
    ({ lines }) => lines,
    (one, other) => isSameList(one, other, isSameStance),
  );

const isSameStance = (one: Stance, other: Stance) =>
  one.machine === other.machine &&
  one.soiled === other.soiled &&
  one.clean === other.clean &&
  one.hand === other.hand &&
  one.inside === other.inside &&
  one.stand?.centre === other.stand?.centre &&
  one.stand?.width === other.stand?.width &&
  hasSameFields(one.configuration, other.configuration);

const isSameList = <T>(one: readonly T[], other: readonly T[], isSame: (a: T, b: T) => boolean = Object.is) =>
  one.length === other.length && one.every((item, i) => isSame(item, other[i] as T));
