import { describe, expect, test } from 'vitest';
import type { Fitting, Table } from '../../src/plan';
import { deriveTableSolids } from '../../src/scene/table/deriveTableSolids';
import { spanOf } from '../../src/scene/table/placeFitting';
import type { Solid } from '../../src/scene/types';
import { pathOf, rounded, tableAt } from './hall';
import { table } from './plans';

const SINK: Fitting = {
  id: 'it',
  kind: 'sink',
  at: 800,
  length: 500,
  width: 400,
  bowlDepth: 200,
  spray: true,
  rackSlide: null,
  waste: null,
};
const SCRAP: Fitting = { id: 'it', kind: 'scrap', at: 800, length: 200, width: 180 } as Fitting;
const SHELF: Fitting = { id: 'it', kind: 'overshelf', at: 1000, length: 600, depth: 300, height: 1400 };
const LANDING: Fitting = { id: 'it', kind: 'landing', at: 300, length: 500 };
const DROP_OFF: Fitting = { id: 'it', kind: 'drop-off', at: 1700, length: 500 };

/** A table 762 deep; from its rack line 273 to the operator's edge and 489 to the back. */
const SPANS: readonly { name: string; fitting: Fitting; left: [number, number]; right: [number, number] }[] = [
  { name: 'a sink lies about the rack line', fitting: SINK, left: [200, 200], right: [200, 200] },
  { name: 'a scrap opening too', fitting: SCRAP, left: [90, 90], right: [90, 90] },
  // Of its 300 from the back edge none reach the rack line: 489 − 300 = 189 short of it.
  { name: 'an overshelf hangs from the back edge', fitting: SHELF, left: [-189, 489], right: [489, -189] },
  { name: 'a landing takes the whole depth', fitting: LANDING, left: [273, 489], right: [489, 273] },
  { name: 'a drop-off too', fitting: DROP_OFF, left: [273, 489], right: [489, 273] },
];

describe.each(SPANS)('to the left and right of the rack line: $name', ({ fitting, left, right }) => {
  test.each([
    ['left', left],
    ['right', right],
  ] as const)('the operator at its %s', (operatorSide, span) => expect(spanOf(fitting, table({ operatorSide }))).toEqual(span));
});

interface BodyRow {
  name: string;
  change: Partial<Table>;
  fittings?: readonly Fitting[];
  /** Kind, underside, top and pieces of each body; corners are sorted by x, then y. */
  bodies: readonly (readonly [Solid['kind'], number, number, ...string[]])[];
}

/** From (2000, 3000) 2000 to the right, its deck at 864 and at its end at 884; its operator below the rack line on the paper. */
const BODY_ROWS: BodyRow[] = [
  {
    name: 'a deck, 50 below its lowest and 75 above its highest',
    change: {},
    bodies: [['table', 814, 959, '2000 2511, 2000 3273, 4000 2511, 4000 3273']],
  },
  {
    name: 'the operator on the other side',
    change: { operatorSide: 'left' },
    bodies: [['table', 814, 959, '2000 2727, 2000 3489, 4000 2727, 4000 3489']],
  },
  {
    name: 'a deck that falls the other way',
    change: { deck: { kind: 'fall', jointHeight: 864, fall: -0.01 } },
    bodies: [['table', 794, 939, '2000 2511, 2000 3273, 4000 2511, 4000 3273']],
  },
  {
    name: 'a deck of which one height is known',
    change: { deck: { kind: 'heights', heights: [870, null] } },
    bodies: [['table', 820, 945, '2000 2511, 2000 3273, 4000 2511, 4000 3273']],
  },
  {
    name: 'a deck of which none is: at 900',
    change: { deck: { kind: 'heights', heights: [null, null] } },
    bodies: [['table', 850, 975, '2000 2511, 2000 3273, 4000 2511, 4000 3273']],
  },
  {
    name: 'a bowl, hanging 200 below the lowest deck',
    change: {},
    fittings: [SINK],
    bodies: [
      ['table', 814, 959, '2000 2511, 2000 3273, 4000 2511, 4000 3273'],
      ['table', 664, 864, '2550 2800, 2550 3200, 3050 2800, 3050 3200'],
    ],
  },
  {
    name: 'a backsplash along the back edge, 40 thick',
    change: { backsplash: 250 },
    bodies: [
      ['table', 814, 959, '2000 2511, 2000 3273, 4000 2511, 4000 3273'],
      ['backsplash', 864, 1134, '2000 2511, 2000 2551, 4000 2511, 4000 2551'],
    ],
  },
  {
    name: 'a backsplash on the other side',
    change: { backsplash: 250, operatorSide: 'left' },
    bodies: [
      ['table', 814, 959, '2000 2727, 2000 3489, 4000 2727, 4000 3489'],
      ['backsplash', 864, 1134, '2000 3449, 2000 3489, 4000 3449, 4000 3489'],
    ],
  },
  {
    name: 'an overshelf, 350 high with the racks on it; what lies on the deck is no body',
    change: {},
    fittings: [SHELF, LANDING, DROP_OFF, SCRAP],
    bodies: [
      ['table', 814, 959, '2000 2511, 2000 3273, 4000 2511, 4000 3273'],
      ['overshelf', 1400, 1750, '2700 2511, 2700 2811, 3300 2511, 3300 2811'],
    ],
  },
];

test.each(BODY_ROWS)('bodies of a table: $name', ({ change, fittings = [], bodies }) => {
  const placed = tableAt(2000, 3000, 0, { ...change, fittings: [...fittings] });
  const found = deriveTableSolids(placed, 900).map(({ kind, zFrom, zTo, pieces }) => [kind, zFrom, zTo, ...pieces.map(cornersOf)]);
  expect(found).toEqual(
    bodies.map(([kind, zFrom, zTo, ...pieces]) => [kind, zFrom, zTo, ...pieces.map((piece) => cornersOf(pathOf(piece)))]),
  );
});

const cornersOf = (polygon: readonly { x: number; y: number }[]) =>
  rounded(polygon)
    .toSorted((a, b) => a.x - b.x || a.y - b.y)
    .map(({ x, y }) => `${x} ${y}`)
    .join(', ');
