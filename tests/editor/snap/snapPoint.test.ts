import { describe, expect, it } from 'vitest';
import { raysFrom, type SnapLine, snapPoint } from '../../../src/editor/snap/snapPoint';
import { nearly } from '../../support/nearly';

const at = (x: number, y: number) => ({ x, y });
const line = (x: number, y: number, deg: number, kind: SnapLine['kind'] = 'square'): SnapLine => ({
  origin: at(x, y),
  direction: at(Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)),
  kind,
});
/** Level through (100, 50), upright through (300, 80). */
const level: SnapLine = { origin: at(100, 50), direction: at(1, 0), kind: 'square' };
const upright: SnapLine = { origin: at(300, 80), direction: at(0, 1), kind: 'aligned' };

describe('a point', () => {
  it.each([
    { name: 'is caught at the reach', point: at(18, 24), points: [at(0, 0)], gives: at(0, 0) },
    { name: 'is free beyond it', point: at(18, 24.1), points: [at(0, 0)], gives: at(18, 24.1) },
    { name: 'goes to the nearest, the first', point: at(10, 0), points: [at(0, 0), at(25, 0)], gives: at(0, 0) },
    { name: 'goes to the nearest, the second', point: at(10, 0), points: [at(-15, 0), at(2, 0)], gives: at(2, 0) },
    { name: 'goes to a point before a line', point: at(110, 50), points: [at(120, 70)], gives: at(120, 70) },
  ])('$name', ({ point, points, gives }) => {
    expect(snapPoint(point, { points, lines: [] }, 30, 0).point).toEqual(gives);
  });

  it('shows where it was caught, and nothing while it is free', () => {
    const targets = { points: [at(0, 0)], lines: [] };
    expect(snapPoint(at(10, 0), targets, 30, 50)).toEqual({ point: at(0, 0), guides: [{ kind: 'aligned', from: at(0, 0), to: at(0, 0) }] });
    expect(snapPoint(at(111, 97), targets, 30, 50)).toEqual({ point: at(111, 97), guides: [] });
  });
});

describe('a line', () => {
  it.each([
    { name: 'above, at the reach', point: at(212, 20), step: 0, gives: at(212, 50) },
    { name: 'above, beyond the reach', point: at(212, 19.5), step: 0, gives: at(212, 19.5) },
    { name: 'below, at the reach', point: at(212, 80), step: 0, gives: at(212, 50) },
    { name: 'below, beyond the reach', point: at(212, 80.5), step: 0, gives: at(212, 80.5) },
    { name: 'in steps from its origin', point: at(212, 40), step: 50, gives: at(200, 50) },
    { name: 'in steps before its origin', point: at(41, 40), step: 50, gives: at(50, 50) },
  ])('$name', ({ point, step, gives }) => {
    expect(snapPoint(point, { points: [], lines: [level] }, 30, step).point).toEqual(gives);
  });

  it('the nearer of two that run alongside', () => {
    const lower: SnapLine = { ...level, origin: at(0, 70) };
    expect(snapPoint(at(212, 59), { points: [], lines: [lower, level] }, 30, 0).point).toEqual(at(212, 50));
    expect(snapPoint(at(212, 61), { points: [], lines: [lower, level] }, 30, 0).point).toEqual(at(212, 70));
  });

  it('is shown from its origin to the point', () => {
    expect(snapPoint(at(212, 40), { points: [], lines: [level] }, 30, 50).guides).toEqual([
      { kind: 'square', from: at(100, 50), to: at(200, 50) },
    ]);
  });

  it('at any angle', () => {
    // 3-4-5: along (0.8, 0.6) by 100, then 10 to the right of it.
    const slant: SnapLine = { origin: at(0, 0), direction: at(0.8, 0.6), kind: 'square' };
    expect(snapPoint(at(80 - 6, 60 + 8), { points: [], lines: [slant] }, 30, 0).point).toEqual(nearly(at(80, 60)));
  });
});

describe('where two lines meet', () => {
  const lines = [level, upright];
  it.each([
    { name: 'near both', point: at(290, 62), gives: at(300, 50) },
    { name: 'from the other side', point: at(318, 41), gives: at(300, 50) },
    // 27 and 36 off: 45 from the crossing, half as far again as the reach of 30.
    { name: 'beyond the reach of the second', point: at(264, 23), gives: at(264, 50) },
  ])('$name', ({ point, gives }) => {
    expect(snapPoint(point, { points: [], lines }, 30, 0).point).toEqual(gives);
  });

  it('shows both lines, the nearer first', () => {
    const { guides } = snapPoint(at(290, 45), { points: [], lines: [upright, level] }, 30, 0);
    expect(guides).toEqual([
      { kind: 'square', from: at(100, 50), to: at(300, 50) },
      { kind: 'aligned', from: at(300, 80), to: at(300, 50) },
    ]);
  });

  it.each([
    // Lines at 12° have a sine of 0.208, at 11° of 0.191.
    { deg: 12, meets: true },
    { deg: 11, meets: false },
    { deg: -12, meets: true },
    { deg: -11, meets: false },
  ])('lines at $deg° are an aim together: $meets', ({ deg, meets }) => {
    const { guides } = snapPoint(at(5, 0.1), { points: [], lines: [line(-100, 0, 0), line(0, 0, deg)] }, 30, 0);
    expect(guides).toHaveLength(meets ? 2 : 1);
  });

  it.each([
    // At 30° the crossing lies farther off than the lines do.
    { name: 'at half as far again as the reach', x: 45, meets: true },
    { name: 'beyond', x: 45.5, meets: false },
  ])('$name', ({ x, meets }) => {
    const { guides } = snapPoint(at(x, 0), { points: [], lines: [line(-100, 0, 0), line(0, 0, 30)] }, 30, 0);
    expect(guides).toHaveLength(meets ? 2 : 1);
  });
});

describe('rays', () => {
  const half = Math.SQRT1_2;
  it.each([
    { name: 'square to the paper', direction: at(1, 0), diagonals: false, gives: [at(1, 0), at(0, 1)] },
    { name: 'with diagonals', direction: at(1, 0), diagonals: true, gives: [at(1, 0), at(0, 1), at(half, half), at(half, -half)] },
    { name: 'upright', direction: at(0, 1), diagonals: true, gives: [at(0, 1), at(-1, 0), at(-half, half), at(half, half)] },
    {
      name: 'slant',
      direction: at(0.8, 0.6),
      diagonals: true,
      gives: [at(0.8, 0.6), at(-0.6, 0.8), at(0.2 * half, 1.4 * half), at(1.4 * half, -0.2 * half)],
    },
  ])('$name', ({ direction, diagonals, gives }) => {
    const rays = raysFrom(at(3, 4), direction, 'aligned', diagonals);
    expect(rays.map((ray) => ray.direction)).toEqual(nearly(gives));
    expect(rays.every(({ origin, kind }) => origin.x === 3 && origin.y === 4 && kind === 'aligned')).toBe(true);
  });

  it('are two, and square, where nothing else is said', () => {
    expect(raysFrom(at(0, 0), at(1, 0)).map(({ kind }) => kind)).toEqual(['square', 'square']);
  });
});
