import { describe, expect, test } from 'vitest';
import { type TablePlace, transformPlan } from '../../../src/plan';
import { deriveScene, type Joint } from '../../../src/scene';
import { first, linePlan, near, tableOf } from '../plans';

type Joined = Extract<TablePlace, { kind: 'joined' }>;

interface Row {
  name: string;
  place: Partial<Joined>;
  jointHeight?: number | null;
  expected: Pick<Joint, 'gap' | 'offset' | 'angleDeg' | 'deckStep'>;
}

const rad = (deg: number) => (deg * Math.PI) / 180;

/**
 * The table at the left side of a machine 737 × 711 with its door in the middle of the side, 355.5
 * from the back. The table's end edge reaches 273 toward the front and 489 toward the back; the
 * machine's side ends 355.5 to the back of the door.
 */
const ROWS: Row[] = [
  { name: 'flush', place: {}, expected: { gap: 0, offset: 0, angleDeg: 0, deckStep: 0 } },
  { name: 'gap of 12', place: { gap: 12 }, expected: { gap: 12, offset: 0, angleDeg: 0, deckStep: 0 } },
  { name: 'overlap of 5', place: { gap: -5 }, expected: { gap: -5, offset: 0, angleDeg: 0, deckStep: 0 } },
  { name: '7 to the right of a person walking out', place: { offset: 7 }, expected: { gap: 0, offset: 7, angleDeg: 0, deckStep: 0 } },
  {
    name: 'skewed clockwise: nearest where the machine ends, since the table reaches past it',
    place: { gap: 12, skewDeg: 1.5 },
    expected: { gap: 12 - 355.5 * Math.tan(rad(1.5)), offset: 0, angleDeg: 1.5, deckStep: 0 },
  },
  {
    name: 'skewed the other way: nearest at the operator’s corner',
    place: { gap: 12, skewDeg: -1.5 },
    expected: { gap: 12 - 273 * Math.sin(rad(1.5)), offset: 0, angleDeg: 1.5, deckStep: 0 },
  },
  {
    name: 'skewed and drawn flush: runs into the machine',
    place: { skewDeg: -1 },
    expected: { gap: -273 * Math.sin(rad(1)), offset: 0, angleDeg: 1, deckStep: 0 },
  },
  { name: 'deck 8 too high', place: {}, jointHeight: 871.6, expected: { gap: 0, offset: 0, angleDeg: 0, deckStep: 8 } },
  { name: 'deck height not known', place: {}, jointHeight: null, expected: { gap: 0, offset: 0, angleDeg: 0, deckStep: null } },
  {
    // The end edge begins 1500 − 273 = 1227 toward the back of the door, 871.5 past the machine's end.
    name: 'wholly beside the machine: the plain distance',
    place: { gap: 30, offset: 1500 },
    expected: { gap: Math.hypot(30, 1500 - 273 - 355.5), offset: 1500, angleDeg: 0, deckStep: 0 },
  },
];

describe.each(ROWS)('$name', ({ place, jointHeight, expected }) => {
  const plan = linePlan({ family: 'recirculating-hot-water' }, (draft) => {
    const table = tableOf(draft, 'soiled-table');
    Object.assign(table.place, place);
    if (jointHeight !== undefined) table.deck = { kind: 'fall', jointHeight, fall: 0.01 };
  });

  test.each([0, 90, 180, 270, 33])('turned by %d°', (rotateDeg) => expectJoint(jointOf(transformPlan(plan, { rotateDeg })), expected));

  test('in a mirror', () => expectJoint(jointOf(transformPlan(plan, { mirror: true })), { ...expected, offset: -expected.offset }));
});

const jointOf = (plan: ReturnType<typeof linePlan>) => first(deriveScene(plan).joints.filter(({ table }) => table === 'soiled-table'));

function expectJoint({ gap, offset, angleDeg, deckStep }: Joint, expected: Row['expected']): void {
  const wanted = [expected.gap, expected.offset, expected.angleDeg, expected.deckStep].map((value) => near(value));
  expect([gap, offset, angleDeg, deckStep]).toEqual(wanted);
}

test('a table at a side without a door has a joint, and no door', () => {
  const plan = linePlan({}, (draft) => Object.assign(tableOf(draft, 'soiled-table').place, { side: 'back' }));
  const scene = deriveScene(plan);
  expect(jointOf(plan)).toMatchObject({ side: 'back', hasDoor: false, offset: 0 });
  expect(first(scene.lines)).toMatchObject({ configuration: { kind: 'none', reason: 'back' }, hand: null, inside: null, stand: null });
});
