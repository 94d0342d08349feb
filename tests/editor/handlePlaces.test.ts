import { describe, expect, it } from 'vitest';
import { handlesFor } from '../../src/editor';
import type { Handle } from '../../src/editor/hit/handle';
import { cursorAlong } from '../../src/editor/hit/handlesFor';
import { edit, freeTable, type Plan, UNKNOWN_FLOOR_WASTE } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { nearly } from '../support/nearly';
import { at } from './driver';
import { emptyPlan, straightPlan, withThing } from './plans';

type Row = readonly [id: string, x: number, y: number, cursor: string, shape?: 'square' | 'round'];

const handles = (plan: Plan, id: string, scale = 0.2) => handlesFor(deriveScene(plan), id, scale);
const rows = (list: readonly Handle[]) => list.map(({ id, point, cursor, shape }) => [id, point.x, point.y, cursor, shape]);
const squares = (list: readonly Row[]) => list.map(([id, x, y, cursor, shape = 'square']) => [id, x, y, cursor, shape]);

/** The cart is 800 × 500 at (2000, 3500); at 0.2 px/mm the rotate handle stands 26 px, 130 mm, before its front. */
const CART: Row[] = [
  ['left', 1600, 3500, 'ew-resize'],
  ['right', 2400, 3500, 'ew-resize'],
  ['back', 2000, 3250, 'ns-resize'],
  ['front', 2000, 3750, 'ns-resize'],
  ['left-back', 1600, 3250, 'nwse-resize'],
  ['right-back', 2400, 3250, 'nesw-resize'],
  ['right-front', 2400, 3750, 'nwse-resize'],
  ['left-front', 1600, 3750, 'nesw-resize'],
  ['rotate', 2000, 3880, 'grab', 'round'],
];
const TURNED: Row[] = [
  ['left', 2000, 3100, 'ns-resize'],
  ['right', 2000, 3900, 'ns-resize'],
  ['back', 2250, 3500, 'ew-resize'],
  ['front', 1750, 3500, 'ew-resize'],
  ['left-back', 2250, 3100, 'nesw-resize'],
  ['right-back', 2250, 3900, 'nwse-resize'],
  ['right-front', 1750, 3900, 'nesw-resize'],
  ['left-front', 1750, 3100, 'nwse-resize'],
  ['rotate', 1620, 3500, 'grab', 'round'],
];

const free = edit(straightPlan(), 'free', freeTable('soiled-table')).plan;
const column = edit(emptyPlan(), 'column', (draft) => {
  draft.room.columns.push({ id: 'column-1', x: 7000, y: 4000, width: 300, depth: 170, rotationDeg: 0 });
  draft.room.floorDrains.push({ id: 'drain-1', kind: 'floor-drain', x: 5000, y: 3000, size: 204, waste: UNKNOWN_FLOOR_WASTE });
  draft.room.stubs.push({ id: 'stub-1', kind: 'power', x: 100, y: 110, z: 1200 });
}).plan;
const run = edit(straightPlan('direct-vent'), 'run', (draft) => {
  draft.runs[0]!.points = [
    { x: 4000, y: 594.5, z: 2600 },
    { x: 4000, y: 1594.5, z: 2600 },
  ];
  draft.runs[0]!.fan!.at = 1170;
}).plan;

describe('handles stand', () => {
  it.each<{ name: string; plan: Plan; id: string; gives: Row[] }>([
    { name: 'around a thing', plan: withThing(emptyPlan()), id: 'cart-1', gives: CART },
    { name: 'around one that is turned', plan: withThing(emptyPlan(), { rotationDeg: 90 }), id: 'cart-1', gives: TURNED },
    {
      name: 'before the front of a machine',
      plan: straightPlan(),
      id: 'machine',
      gives: [['rotate', 4000, 1155.5 + 130, 'grab', 'round']],
    },
    { name: 'at the end of a joined table', plan: straightPlan(), id: 'soiled-table', gives: [['leg-0', 731.5, 800, 'ew-resize']] },
    {
      name: 'at both ends of a free table, and behind its start',
      plan: free,
      id: 'soiled-table',
      gives: [
        ['leg-0', 731.5, 800, 'ew-resize'],
        ['start', 3631.5, 800, 'ew-resize'],
        ['rotate', 3761.5, 800, 'grab', 'round'],
      ],
    },
    {
      name: 'at the turns of a table',
      plan: edit(straightPlan(), 'bend', (draft) => void draft.tables[0]!.legs.push({ length: 800, turnDeg: -90 })).plan,
      id: 'soiled-table',
      gives: [
        ['leg-0', 731.5, 800, 'ew-resize', 'round'],
        ['leg-1', 731.5, 1600, 'ns-resize'],
      ],
    },
    {
      name: 'at both ends of a fitting',
      plan: straightPlan(),
      id: 'pre-rinse',
      gives: [
        ['from', 3631.5 - 1530, 800, 'ew-resize'],
        ['to', 3631.5 - 2040, 800, 'ew-resize'],
      ],
    },
    {
      name: 'at both ends of a door, along its wall',
      plan: edit(emptyPlan(), 'two', (draft) => void draft.room.openings.push({ ...draft.room.openings[0]!, id: 'door-2', from: 4000 }))
        .plan,
      id: 'door-1',
      gives: [
        ['from', 7000, 5000, 'ew-resize'],
        ['to', 6086, 5000, 'ew-resize'],
      ],
    },
    {
      name: 'at both corners of a wall',
      plan: emptyPlan(),
      id: 'wall-4',
      gives: [
        ['corner-wall-4', 0, 5000, 'move', 'round'],
        ['corner-wall-1', 0, 0, 'move', 'round'],
      ],
    },
    {
      name: 'at the points of a run and at its fan',
      plan: run,
      id: 'run',
      gives: [
        ['point-0', 4000, 594.5, 'move', 'round'],
        ['point-1', 4000, 1594.5, 'move', 'round'],
        // 670 up, then 500 of the 1000 along.
        ['fan', 4000, 1094.5, 'move'],
      ],
    },
    {
      name: 'around a column, two of whose edges are too short for their own',
      plan: column,
      id: 'column-1',
      gives: [
        ['back', 7000, 3915, 'ns-resize'],
        ['front', 7000, 4085, 'ns-resize'],
        ['left-back', 6850, 3915, 'nwse-resize'],
        ['right-back', 7150, 3915, 'nesw-resize'],
        ['right-front', 7150, 4085, 'nwse-resize'],
        ['left-front', 6850, 4085, 'nesw-resize'],
        ['rotate', 7000, 4215, 'grab', 'round'],
      ],
    },
    { name: 'nowhere on a drain', plan: column, id: 'drain-1', gives: [] },
    { name: 'nowhere on a stub', plan: column, id: 'stub-1', gives: [] },
    { name: 'nowhere on what is not there', plan: column, id: 'nobody', gives: [] },
  ])('$name', ({ plan, id, gives }) => {
    const found = handles(plan, id);
    expect(rows(found)).toEqual(nearly(squares(gives)));
    expect(found.every(({ subject }) => subject === id)).toBe(true);
  });

  it('a run without a fan has none', () => {
    const bare = edit(run, 'bare', (draft) => void (draft.runs[0]!.fan = null)).plan;
    expect(handles(bare, 'run').map(({ id }) => id)).toEqual(['point-0', 'point-1']);
  });

  it.each([
    // An edge of 500 mm is 36 px long at 0.072 px/mm; the other is 800.
    { scale: 0.072, has: ['left', 'right', 'back', 'front'] },
    { scale: 0.0719, has: ['back', 'front'] },
    { scale: 0.045, has: ['back', 'front'] },
    { scale: 0.0449, has: [] },
  ])('edges shorter than 36 px have none: $scale px/mm', ({ scale, has }) => {
    const found = handles(withThing(emptyPlan()), 'cart-1', scale);
    expect(found.map(({ id }) => id).filter((id) => !id.includes('-') && id !== 'rotate')).toEqual(has);
    expect(found.at(-1)?.point.y).toBeCloseTo(3750 + 26 / scale, 6);
  });
});

describe('the cursor of a handle', () => {
  it.each([
    [0, 'ew-resize'],
    [22, 'ew-resize'],
    [23, 'nwse-resize'],
    [67, 'nwse-resize'],
    [68, 'ns-resize'],
    [112, 'ns-resize'],
    [113, 'nesw-resize'],
    [157, 'nesw-resize'],
    [158, 'ew-resize'],
    [180, 'ew-resize'],
    [225, 'nwse-resize'],
    [-45, 'nesw-resize'],
  ])('along %d°: %s', (deg, cursor) => {
    expect(cursorAlong(at(Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)))).toBe(cursor);
  });
});
