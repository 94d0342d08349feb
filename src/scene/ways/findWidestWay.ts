import { type Body, distance, type Passage, type Point, solveWidestPassage } from '../../geometry';
import { memoizeByIdentity } from '../memoizeByIdentity';
import { type Doorway, openBay, openWideBay } from '../room/doorway';
import type { Line, PlacedOpening, PlacedRoom, Scene, Solid } from '../types';
import { floorBodies } from './floorObstacles';
import { stepBack } from './stepBack';

/** The widest way in: the opening that it begins at, and where it is narrowest after it. */
export interface Way {
  opening: PlacedOpening;
  /** Clear width of the opening itself. */
  door: number;
  aisle: Passage;
  /** The place itself: before the machine, with a step back. */
  to: Point;
}

/**
 * The best way to the operator's place of all doors and cased openings; null when there is no place or no door. A leaf
 * is no obstacle: it opens. Ways wider than `enough` are not told apart.
 */
export const findWidestWay = ({ room, solids }: Pick<Scene, 'room' | 'solids'>, line: Line, enough: number): Way | null =>
  remembered(line, room, solids, enough);

const remembered = memoizeByIdentity((line: Line, room: PlacedRoom, solids: Solid[], enough: number): Way | null => {
  if (line.stand === null) return null;
  const obstacles = floorBodies({ solids });
  const to = stepBack({ room }, line, line.stand, obstacles);
  let widest: Way | null = null;
  for (const opening of room.openings) {
    if (!opening.isWay) continue;
    const way = measureWay(room, opening, obstacles, to, enough);
    if (widest === null || widthOf(way) > widthOf(widest)) widest = way;
  }
  return widest;
});

/**
 * The way from one opening to a place. Where the jambs themselves are the narrowest place, and nearer than enough, the
 * aisle behind them is measured once more without them.
 */
export function measureWay(room: PlacedRoom, opening: PlacedOpening, obstacles: readonly Body[], to: Point, enough: number): Way {
  const door = distance(opening.segment.a, opening.segment.b);
  const solve = ({ outline, from }: Doorway) => solveWidestPassage(outline, obstacles, from, to, enough);
  const through = solve(openBay(opening, room));
  const isAtDoor = through.width >= door - 1e-6 && door < enough;
  return { opening, door, aisle: isAtDoor ? solve(openWideBay(opening, room, enough)) : through, to };
}

const widthOf = ({ door, aisle }: Way) => Math.min(door, aisle.width);
