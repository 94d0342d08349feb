import { describe, expect, it } from 'vitest';
import type { Box } from '../../../src/editor/snap/box';
import { type SnapOptions, snapBoxes, type Targets } from '../../../src/editor/snap/snapBoxes';
import { nearly } from '../../support/nearly';
import { boxAt as box, wallFrom, roomWalls as walls } from '../shapes';

const snap = (moving: readonly Box[], targets: Partial<Targets>, options: Partial<SnapOptions> = {}) =>
  snapBoxes(moving, { walls: [], boxes: [], ...targets }, { reach: 30, step: 0, ...options });

const at = (x: number, y: number) => ({ x, y });

describe('a box at a wall', () => {
  // 800 × 500, so that its sides lie 400 and 250 from its middle.
  it.each([
    { name: 'left, at the reach', x: 430, y: 2000, by: at(-30, 0) },
    { name: 'left, beyond the reach', x: 430.5, y: 2000, by: at(0, 0) },
    { name: 'left, as far past the wall', x: 370, y: 2000, by: at(30, 0) },
    { name: 'left, farther past the wall', x: 369.5, y: 2000, by: at(0, 0) },
    { name: 'right, at the reach', x: 7570, y: 2000, by: at(30, 0) },
    { name: 'right, beyond the reach', x: 7569.5, y: 2000, by: at(0, 0) },
    { name: 'right, past the wall', x: 7630, y: 2000, by: at(-30, 0) },
    { name: 'above, at the reach', x: 3000, y: 280, by: at(0, -30) },
    { name: 'above, beyond the reach', x: 3000, y: 280.5, by: at(0, 0) },
    { name: 'below, at the reach', x: 3000, y: 4720, by: at(0, 30) },
    { name: 'below, beyond the reach', x: 3000, y: 4719.5, by: at(0, 0) },
    { name: 'in a corner', x: 7580, y: 4740, by: at(20, 10) },
  ])('$name', ({ x, y, by }) => {
    expect(snap([box(x, y, 800, 500)], { walls }).by).toEqual(nearly(by));
  });

  it('shows the caught line along the side of the box, moved with it', () => {
    expect(snap([box(420, 2000, 800, 500)], { walls }).guides).toEqual([{ kind: 'flush', from: at(0, 1750), to: at(0, 2250) }]);
    // Down by 10 as well: the guide at the left wall goes along.
    expect(snap([box(420, 4740, 800, 500)], { walls }).guides).toEqual(
      nearly([
        { kind: 'flush', from: at(0, 4500), to: at(0, 5000) },
        { kind: 'flush', from: at(800, 5000), to: at(0, 5000) },
      ]),
    );
  });

  it.each([
    { name: 'u', by: at(-20, 0) },
    { name: 'v', by: at(0, 10) },
    { name: 'both', by: at(-20, 10) },
  ] as const)('along $name only', ({ name, by }) => {
    expect(snap([box(420, 4740, 800, 500)], { walls }, { axes: name }).by).toEqual(nearly(by));
  });

  it('at its own rotation, in a room that lies so', () => {
    // A wall from (0, 0) at 30°; its inside lies to the right of the walk. The box hangs 10 mm off it.
    const [c, s] = [Math.sqrt(3) / 2, 0.5];
    const wall = wallFrom(0, 0, 4000 * c, 4000 * s);
    const middle = at(2000 * c - 260 * s, 2000 * s + 260 * c);
    const result = snap([box(middle.x, middle.y, 800, 500, 30)], { walls: [wall] });
    expect(result.by).toEqual(nearly(at(10 * s, -10 * c)));
    expect(result.guides).toEqual(nearly([{ kind: 'flush', from: at(2400 * c, 2400 * s), to: at(1600 * c, 1600 * s) }]));
  });

  it.each([
    { name: 'one millimetre of it before the wall', from: 49, by: 30 },
    { name: 'less than a millimetre', from: 49.5, by: 0 },
  ])('a wall that ends beside the box: $name', ({ from, by }) => {
    // Its side reaches from −50 to 50.
    expect(snap([box(0, 0)], { walls: [wallFrom(130, from, 130, 900)] }).by.x).toBeCloseTo(by, 9);
    expect(snap([box(0, 0)], { walls: [wallFrom(130, -900, 130, -from)] }).by.x).toBeCloseTo(by, 9);
  });

  it.each([
    { deg: 0.4, by: true },
    { deg: 0.6, by: false },
    { deg: -0.4, by: true },
    { deg: -0.6, by: false },
  ])('a wall that is $deg° off counts as parallel: $by', ({ deg, by }) => {
    const rise = Math.tan((deg * Math.PI) / 180);
    // Through (0, 60) at this angle: 10 mm below the box.
    const wall = wallFrom(1000, 60 + 1000 * rise, -1000, 60 - 1000 * rise);
    expect(snap([box(0, 0)], { walls: [wall] }, { axes: 'v' }).guides).toHaveLength(by ? 1 : 0);
  });
});

describe('a box beside another', () => {
  // 200 × 100 about the origin: from −100 to 100 across, −50 to 50 down.
  it.each([
    { name: 'flush before it, at the reach', target: box(230, 0), by: 30, kind: 'flush' },
    { name: 'flush before it, beyond the reach', target: box(230.5, 0), by: 0, kind: null },
    { name: 'flush after it, at the reach', target: box(-230, 0), by: -30, kind: 'flush' },
    { name: 'flush after it, beyond the reach', target: box(-230.5, 0), by: 0, kind: null },
    { name: 'flush out of an overlap', target: box(170, 0), by: -30, kind: 'flush' },
    { name: 'flush, its sides overlap by more than 1 mm', target: box(230, 98.5), by: 30, kind: 'flush' },
    { name: 'no more flush where they overlap by 1 mm', target: box(230, 99), by: 0, kind: null },
    { name: 'flush, above', target: box(230, -98.5), by: 30, kind: 'flush' },
    { name: 'no more flush above', target: box(230, -99), by: 0, kind: null },
    { name: 'in line at its lower end', target: box(80, 500, 300), by: 30, kind: 'aligned' },
    { name: 'in line at its upper end', target: box(-80, 500, 300), by: -30, kind: 'aligned' },
    { name: 'in line as far as 3 m aside', target: box(80, 3100, 300), by: 30, kind: 'aligned' },
    { name: 'not in line beyond 3 m', target: box(80, 3100.5, 300), by: 0, kind: null },
    { name: 'in line 3 m above', target: box(80, -3100, 300), by: 30, kind: 'aligned' },
    { name: 'not in line beyond 3 m above', target: box(80, -3100.5, 300), by: 0, kind: null },
    { name: 'centred on a wider one', target: box(30, 500, 400), by: 30, kind: 'centred' },
    { name: 'centred rather than in line, where all agree', target: box(30, 500), by: 30, kind: 'centred' },
    { name: 'a quarter turned one', target: box(180, 0, 100, 200, 90), by: -20, kind: 'flush' },
    { name: 'one that stands at 45° catches nothing', target: box(150, 0, 100, 100, 45), by: 0, kind: null },
    { name: 'one that stands at 135° catches nothing', target: box(150, 0, 100, 100, 135), by: 0, kind: null },
  ])('$name', ({ target, by, kind }) => {
    const result = snap([box(0, 0)], { boxes: [target] }, { axes: 'u' });
    expect(result.by).toEqual(nearly(at(by, 0)));
    expect(result.guides.map((guide) => guide.kind)).toEqual(kind === null ? [] : [kind]);
  });

  it.each([
    { deg: 0.4, isCaught: true },
    { deg: 0.6, isCaught: false },
    { deg: 89.6, isCaught: true },
    { deg: 89.4, isCaught: false },
  ])('at $deg° to it, is caught: $isCaught', ({ deg, isCaught }) => {
    expect(snap([box(0, 0)], { boxes: [box(210, 0, 200, 200, deg)] }, { axes: 'u' }).guides).toHaveLength(isCaught ? 1 : 0);
  });

  it.each([
    { name: 'flush before in line', aligned: -20.5, by: 30 },
    { name: 'in line where that is much nearer', aligned: -19.5, by: -19.5 },
  ])('$name', ({ aligned, by }) => {
    // Flush to the one at the right; in line with a wide one below, at its lower end or at its upper one.
    for (const below of [box(aligned - 100 + 450, 500, 900), box(aligned + 100 - 450, 500, 900)])
      expect(snap([box(0, 0)], { boxes: [box(230, 0), below] }, { axes: 'u' }).by.x).toBeCloseTo(by, 9);
  });

  it.each([
    { name: 'flush before centred', centred: -21.5, by: 30 },
    { name: 'centred where that is much nearer', centred: -21.4, by: -21.4 },
  ])('$name', ({ centred, by }) => {
    expect(snap([box(0, 0)], { boxes: [box(230, 0), box(centred, 500, 900)] }, { axes: 'u' }).by.x).toBeCloseTo(by, 9);
  });

  it.each([
    { name: 'below', target: box(80, 500, 300), from: -50, to: 550 },
    { name: 'above', target: box(80, -500, 300), from: -550, to: 50 },
    { name: 'flush, over both', target: box(80, 120, 300, 300), from: -50, to: 270 },
  ])('the guide reaches over both: $name', ({ target, from, to }) => {
    expect(snap([box(0, 0)], { boxes: [target] }, { axes: 'u' }).guides).toEqual([
      { kind: 'aligned', from: at(-70, from), to: at(-70, to) },
    ]);
  });

  it('what moves along catches too, as far as it lies along the first', () => {
    const boxes = [box(430, 300)];
    expect(snap([box(0, 0), box(200, 300)], { boxes }, { axes: 'u' }).by.x).toBeCloseTo(30, 9);
    expect(snap([box(0, 0), box(200, 300, 200, 200, 45)], { boxes }, { axes: 'u' }).by.x).toBe(0);
  });

  it('without a box there is nothing to move', () => {
    expect(snap([], { walls, boxes: [box(0, 0)] }, { step: 50 })).toEqual({ by: at(0, 0), guides: [] });
  });
});

describe('limits, for a hood', () => {
  it.each([
    { name: 'its lower edge is kept to', limit: box(80, 0, 300), by: 30 },
    { name: 'its upper edge is kept to', limit: box(-80, 0, 300), by: -30 },
    { name: 'nothing stands flush to it', limit: box(230, 0, 200), by: 0 },
    { name: 'nor centred', limit: box(25, 0, 400), by: 0 },
  ])('$name', ({ limit, by }) => {
    const result = snap([box(0, 0)], { limits: [limit] }, { axes: 'u' });
    expect(result.by.x).toBeCloseTo(by, 9);
    expect(result.guides.map(({ kind }) => kind)).toEqual(by === 0 ? [] : ['overhang']);
  });

  it('weighs as much as standing flush', () => {
    const [limits, boxes] = [[box(75, 500, 300)], [box(-226, 0)]];
    expect(snap([box(0, 0)], { limits, boxes }, { axes: 'u' }).by.x).toBeCloseTo(25, 9);
    expect(snap([box(0, 0)], { limits, boxes: [box(-224, 0)] }, { axes: 'u' }).by.x).toBeCloseTo(-24, 9);
    expect(snap([box(0, 0)], { limits: [box(-75, 500, 300)], boxes: [box(224, 0)] }, { axes: 'u' }).by.x).toBeCloseTo(24, 9);
  });
});

describe('the step, where nothing catches', () => {
  const step = 50;
  // 800 × 500: its left side at x − 400, its right one at x + 400.
  it.each([
    { name: 'from the left wall', x: 1007, y: 1350, by: at(-7, 0) },
    { name: 'on to the next step', x: 1030, y: 1350, by: at(20, 0) },
    { name: 'from the right wall, which is nearer', x: 7003, y: 1350, by: at(-3, 0) },
    { name: 'from the wall above', x: 1000, y: 1362, by: at(0, -12) },
    { name: 'from the wall below', x: 1000, y: 3660, by: at(0, -10) },
    { name: 'from the wall across, where it stands past the nearer', x: -490, y: 1350, by: at(-10, 0) },
    { name: 'from a wall that it touches', x: 400, y: 1350, by: at(0, 0) },
  ])('$name', ({ x, y, by }) => {
    const result = snap([box(x, y, 800, 500)], { walls }, { reach: 0, step });
    expect(result.by).toEqual(nearly(by));
  });

  it.each([
    // 8000 mm are no multiple of 70: the two walls disagree.
    { name: 'a wall that it stands past does not count', x: -490, by: -30 },
    { name: 'a wall that it touches does', x: 400, by: 0 },
  ])('$name', ({ x, by }) => {
    expect(snap([box(x, 1350, 800, 500)], { walls }, { reach: 0, step: 70, axes: 'u' }).by.x).toBeCloseTo(by, 9);
  });

  it('needs no guide, and gives way to what catches', () => {
    expect(snap([box(1007, 1362, 800, 500)], { walls }, { step }).guides).toEqual([]);
    const caught = snap([box(1007, 1362, 800, 500)], { walls, boxes: [box(1012, 3000, 400)] }, { step });
    expect(caught.by).toEqual(nearly(at(5, -12)));
    expect(caught.guides).toEqual(nearly([{ kind: 'centred', from: at(1012, 1100), to: at(1012, 3038) }]));
  });

  it.each([
    { from: 49, by: 13 },
    { from: 49.5, by: 0 },
  ])('a wall that begins $from mm down its side', ({ from, by }) => {
    // 237 mm to the right of a box that reaches to 100.
    expect(snap([box(0, 0)], { walls: [wallFrom(337, from, 337, 900)] }, { reach: 0, step }).by.x).toBeCloseTo(-by, 9);
  });

  it('stays free without a step', () => {
    expect(snap([box(1007, 1362, 800, 500)], { walls }, { step: 0 }).by).toEqual(nearly(at(0, 0)));
  });
});
