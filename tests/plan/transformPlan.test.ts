import { describe, expect, it } from 'vitest';
import { dataSheetSchema, FAMILIES } from '../../src/catalog';
import {
  createLinePlan,
  findPlanProblems,
  jointFrame,
  LINE_CONFIGURATIONS,
  mirrorLine,
  type Plan,
  planSchema,
  resolveDataSheet,
  transformPlan,
} from '../../src/plan';

const CASES = FAMILIES.flatMap(({ id: family }) =>
  LINE_CONFIGURATIONS.flatMap((configuration) =>
    (['left-to-right', 'right-to-left'] as const).map((hand) => ({ family, configuration, hand })),
  ),
);
const plan = createLinePlan({ family: 'direct-vent', configuration: 'left-front', hand: 'left-to-right' });

/** Every number rounded to a millionth, everything else as it is. */
function rounded(value: unknown): unknown {
  if (typeof value === 'number') return Math.round(value * 1e6) / 1e6 + 0;
  if (Array.isArray(value)) return value.map(rounded);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([key, inner]) => [key, rounded(inner)]));
}

/** Starts of the tables, in the room. */
function starts(of: Plan): { x: number; y: number }[] {
  return of.tables.flatMap(({ place }) => {
    const machine = of.machines.find(({ id }) => place.kind === 'joined' && id === place.machine);
    if (place.kind === 'free' || machine === undefined) return [];
    const { x, y } = jointFrame(machine, resolveDataSheet(of, machine), place.side, place);
    return [{ x, y }];
  });
}

describe('transformPlan', () => {
  it.each([
    { mirror: true },
    { rotateDeg: 90 },
    { rotateDeg: 17 },
    { move: { x: -4000, y: 900 } },
    { mirror: true, rotateDeg: -123, move: { x: 5, y: 5 } },
  ])('%j gives a sound plan', (transform) => {
    const moved = transformPlan(plan, transform);
    expect(planSchema.safeParse(moved).error).toBeUndefined();
    expect(findPlanProblems(moved)).toEqual([]);
  });

  it('four quarter turns are none', () => {
    const turned = [1, 2, 3, 4].reduce((now) => transformPlan(now, { rotateDeg: 90 }), plan);
    expect(turned.room).toEqual({ ...plan.room, northDeg: 360 });
    expect(turned.tables).toEqual(plan.tables);
    expect(turned.runs).toEqual(plan.runs);
  });

  it('there and back is where it was', () => {
    const there = transformPlan(plan, { rotateDeg: 33, move: { x: 1000, y: -2000 } });
    const back = transformPlan(transformPlan(there, { move: { x: -1000, y: 2000 } }), { rotateDeg: -33 });
    expect(rounded(back)).toEqual(rounded(plan));
  });

  it.each(CASES)('$family $configuration $hand: mirrored twice it is itself', (options) => {
    const line = createLinePlan({ ...options, rotationDeg: 25 });
    const twice = transformPlan(transformPlan(line, { mirror: true }), { mirror: true });
    expect(rounded(twice)).toEqual(rounded(line));
    expect(twice.sheets).toEqual([]);
  });

  it.each(CASES)('$family $configuration $hand: its tables begin where the mirror shows them', (options) => {
    const line = createLinePlan({ ...options, rotationDeg: 25 });
    const mirrored = transformPlan(line, { mirror: true });
    expect(rounded(starts(mirrored))).toEqual(rounded(starts(line).map(({ x, y }) => ({ x: -x, y }))));
    expect(mirrored.order.hand).not.toBe(line.order.hand);
  });

  it('mirrors every family into a valid sheet, and into itself twice', () => {
    for (const family of FAMILIES) {
      const line = createLinePlan({ family: family.id, configuration: 'straight', hand: 'left-to-right' });
      const [sheet] = transformPlan(line, { mirror: true }).sheets;
      expect(dataSheetSchema.safeParse(sheet).error).toBeUndefined();
      expect(sheet?.id).toBe(`${family.id}-mirrored`);
      expect(sheet?.controls[0]).toMatchObject({ id: 'front-left', name: 'Front, at the right corner', to: family.width - 5 });
    }
  });

  it('keeps walls and what lies on them: same ids, measured from the other end', () => {
    const mirrored = transformPlan(plan, { mirror: true });
    const door = plan.room.openings[0];
    const wall = (of: Plan) => {
      const index = of.room.outline.findIndex(({ id }) => id === door?.wall);
      return [of.room.outline[index], of.room.outline[(index + 1) % 4]] as const;
    };
    const [a, b] = wall(plan);
    const [c, d] = wall(mirrored);
    expect([c?.x, c?.y, d?.x, d?.y]).toEqual([0 - b!.x, b!.y, 0 - a!.x, a!.y]);
    expect(mirrored.room.openings[0]).toMatchObject({
      wall: door?.wall,
      hinge: door?.hinge === 'start' ? 'end' : 'start',
      width: door?.width,
    });
    expect(mirrored.room.openings[0]?.from).toBeCloseTo(Math.abs(a!.x - b!.x) - door!.from - door!.width, 6);
  });
});

describe('mirrorLine', () => {
  it.each(CASES)('$family $configuration $hand gives the line of the other hand, of machines that exist', (options) => {
    const mirrored = mirrorLine(createLinePlan(options));
    const other = { straight: 'straight', 'left-front': 'right-front', 'right-front': 'left-front' } as const;
    const wanted = createLinePlan({
      family: options.family,
      configuration: other[options.configuration],
      hand: options.hand === 'left-to-right' ? 'right-to-left' : 'left-to-right',
    });
    expect(mirrored.sheets).toEqual([]);
    expect(mirrored.tables).toEqual(wanted.tables);
    expect(mirrored.order).toEqual(wanted.order);
    // A straight line has no inside corner: its controls stay where the mirror shows them.
    const controls = options.configuration === 'straight' ? 'front-right' : wanted.machines[0]?.controls;
    expect(mirrored.machines[0]?.controls).toBe(controls);
    expect(findPlanProblems(mirrored)).toEqual([]);
  });
});
