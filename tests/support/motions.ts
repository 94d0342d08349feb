import { type Point, rotate } from '../../src/geometry';

/** Rigid motions that must not change what a shape measures. */
export const MOTIONS: readonly { name: string; isMirror: boolean; move: (p: Point) => Point }[] = [
  ...[0, 90, 180, 270, 37].map((deg) => ({ name: `turned ${deg}°`, isMirror: false, move: (p: Point) => rotate(p, deg) })),
  { name: 'mirrored', isMirror: true, move: (p) => ({ x: -p.x, y: p.y }) },
  { name: 'moved far', isMirror: false, move: (p) => ({ x: p.x + 1e6, y: p.y - 1e6 }) },
];

/** A list of [x, y] as points. */
export const points = (...pairs: readonly (readonly [number, number])[]): Point[] => pairs.map(([x, y]) => ({ x, y }));
