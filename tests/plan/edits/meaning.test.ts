import { describe, expect, it } from 'vitest';
import {
  addCorner,
  createLinePlan,
  createPlan,
  duplicateItems,
  flipTable,
  freeTable,
  jointFrame,
  LINE_CONFIGURATIONS,
  moveCorner,
  moveItems,
  moveWall,
  type Opening,
  ownDataSheet,
  type Plan,
  removeCorner,
  removeItems,
  resolveDataSheet,
  reverseHand,
  rotateItems,
  setConfiguration,
  slopeDeck,
  surveyDeck,
  tryEdit,
} from '../../../src/plan';
import { proveEdit } from './proveEdit';

const HANDS = ['left-to-right', 'right-to-left'] as const;
const line = createLinePlan({ family: 'direct-vent', configuration: 'left-front', hand: 'left-to-right', rotationDeg: 30 });

/** Where each table begins and how it heads, joined or free. */
function tableFrames(plan: Plan) {
  return plan.tables.map(({ place }) => {
    if (place.kind === 'free') return { x: place.x, y: place.y, headingDeg: place.headingDeg };
    const machine = plan.machines.find(({ id }) => id === place.machine);
    if (machine === undefined) throw new Error('no machine');
    return jointFrame(machine, resolveDataSheet(plan, machine), place.side, place);
  });
}

const near = (frame: { x: number; y: number; headingDeg: number }) => ({
  x: expect.closeTo(frame.x, 6),
  y: expect.closeTo(frame.y, 6),
  headingDeg: expect.closeTo(frame.headingDeg, 9),
});

describe('tables stay in place', () => {
  it('when they are freed', () => {
    const plan = proveEdit(line, freeTable('soiled-table'));
    expect(plan.tables[0]?.place.kind).toBe('free');
    expect(tableFrames(plan)).toEqual(tableFrames(line).map(near));
  });

  it('when their machine is removed, and its run goes with it', () => {
    const plan = proveEdit(line, removeItems(['machine']));
    expect(plan.machines).toEqual([]);
    expect(plan.runs).toEqual([]);
    expect(tableFrames(plan)).toEqual(tableFrames(line).map(near));
  });
});

describe('what goes with what', () => {
  it('a moved machine takes its joined tables and its run, once', () => {
    const by = { x: 100, y: -50 };
    for (const ids of [['machine'], ['machine', 'run', 'soiled-table']]) {
      const plan = proveEdit(line, moveItems(ids, by));
      expect(plan.runs[0]?.points[0]?.x).toBeCloseTo((line.runs[0]?.points[0]?.x ?? 0) + 100, 6);
      expect(tableFrames(plan)).toEqual(tableFrames(line).map((f) => near({ ...f, x: f.x + 100, y: f.y - 50 })));
    }
  });

  it('turning a machine four times a quarter brings all back', () => {
    const once = rotateItems(['machine'], 90);
    const plan = [1, 2, 3, 4].reduce((now) => proveEdit(now, once), line);
    expect(tableFrames(plan).map(({ x, y }) => ({ x, y }))).toEqual(
      tableFrames(line).map(({ x, y }) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) })),
    );
    expect(plan.runs[0]?.points[1]?.x).toBeCloseTo(line.runs[0]?.points[1]?.x ?? 0, 6);
  });

  it('a copied line is joined to its own machine', () => {
    const plan = proveEdit(line, duplicateItems(['machine', 'soiled-table', 'clean-table'], { x: 500, y: 0 }));
    expect(plan.tables.slice(2).map(({ place }) => (place.kind === 'joined' ? place.machine : null))).toEqual(['machine-1', 'machine-1']);
    expect(plan.runs[1]).toMatchObject({ id: 'run-1', machine: 'machine-1' });
    expect(plan.runs[1]?.points[0]?.x).toBeCloseTo((line.runs[0]?.points[0]?.x ?? 0) + 500, 6);
  });

  it('a table copied alone is free, beside the first', () => {
    const plan = proveEdit(line, duplicateItems(['clean-table'], { x: 500, y: 0 }));
    expect(plan.tables[2]?.place.kind).toBe('free');
    const [, second] = tableFrames(line);
    expect(tableFrames(plan)[2]).toEqual(near({ ...second!, x: second!.x + 500 }));
  });
});

describe('the line', () => {
  const cases = LINE_CONFIGURATIONS.flatMap((configuration) => HANDS.map((hand) => ({ configuration, hand })));

  it.each(cases)('$configuration $hand: reversing gives the tables of the other hand, twice the same', ({ configuration, hand }) => {
    const plan = createLinePlan({ family: 'tall-door', configuration, hand });
    const other = createLinePlan({
      family: 'tall-door',
      configuration,
      hand: hand === 'left-to-right' ? 'right-to-left' : 'left-to-right',
    });
    const reversed = proveEdit(plan, reverseHand('machine'));
    expect(reversed.tables).toEqual(other.tables);
    expect(reversed.machines[0]?.controls).toBe(other.machines[0]?.controls);
    expect(proveEdit(reversed, reverseHand('machine'))).toEqual(plan);
  });

  it.each(cases)('$configuration $hand becomes every other configuration, in the same hand', ({ configuration, hand }) => {
    const plan = createLinePlan({ family: 'tall-door', configuration, hand });
    for (const to of LINE_CONFIGURATIONS) {
      const wanted = createLinePlan({ family: 'tall-door', configuration: to, hand });
      const turned = proveEdit(plan, setConfiguration('machine', to));
      expect(turned.tables).toEqual(wanted.tables);
      // A straight line has no inside corner: its controls stay.
      expect(turned.machines[0]?.controls).toBe((to === 'straight' ? plan : wanted).machines[0]?.controls);
    }
  });

  it('flipping a table twice gives it back', () => {
    expect(proveEdit(proveEdit(line, flipTable('clean-table')), flipTable('clean-table'))).toEqual(line);
  });

  it('a sloped deck, surveyed and sloped again, is the same deck', () => {
    const surveyed = proveEdit(line, surveyDeck('soiled-table'));
    // regression: ¼ in a foot over 2900 mm from 34 in
    expect(surveyed.tables[0]?.deck).toEqual({ kind: 'heights', heights: [863.6, expect.closeTo(863.6 + 2900 / 48, 9)] });
    const again = proveEdit(surveyed, slopeDeck('soiled-table')).tables[0]?.deck;
    expect(again).toEqual({ kind: 'fall', jointHeight: 863.6, fall: expect.closeTo(1 / 48, 12) });
  });

  it('a sheet of its own is a copy that can be changed', () => {
    const plan = proveEdit(line, ownDataSheet(['machine']));
    expect(plan.machines[0]?.sheet).toBe('direct-vent-1');
    expect(plan.sheets[0]).toMatchObject({ id: 'direct-vent-1', width: 737 });
  });
});

// A room of 4876.8 × 3657.6, its door 304.8 mm from the start of the right wall's end.
const room = createPlan();

/** Middle of the only opening, in the room. */
function doorPlace(plan: Plan): { x: number; y: number } {
  const opening = plan.room.openings[0] as Opening;
  const index = plan.room.outline.findIndex(({ id }) => id === opening.wall);
  const a = plan.room.outline[index]!;
  const b = plan.room.outline[(index + 1) % plan.room.outline.length]!;
  const share = (opening.from + opening.width / 2) / Math.hypot(b.x - a.x, b.y - a.y);
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

describe('walls', () => {
  // The door stands on the wall from (4876.8, 3657.6) to (0, 3657.6), its middle at x = 4114.8.
  const rows: { name: string; recipe: Parameters<typeof proveEdit>[1]; at: { x: number; y: number }; wall: string }[] = [
    {
      name: 'the wall grows at its start: the door stays',
      recipe: moveCorner('wall-3', { x: 5900, y: 3657.6 }),
      at: { x: 4114.8, y: 3657.6 },
      wall: 'wall-3',
    },
    {
      name: 'the wall grows at its end: the door stays',
      recipe: moveCorner('wall-4', { x: -500, y: 3657.6 }),
      at: { x: 4114.8, y: 3657.6 },
      wall: 'wall-3',
    },
    {
      name: 'the wall moves: the door goes with it',
      recipe: moveWall('wall-3', { x: 0, y: 300 }),
      at: { x: 4114.8, y: 3957.6 },
      wall: 'wall-3',
    },
    {
      name: 'the wall shrinks past the door: it is pushed along',
      recipe: moveCorner('wall-3', { x: 2000, y: 3657.6 }),
      at: { x: 1542.8, y: 3657.6 },
      wall: 'wall-3',
    },
    {
      name: 'the wall is broken before the door: it is on the second part',
      recipe: addCorner('wall-3', { id: 'corner-1', x: 4800, y: 3657.6 }),
      at: { x: 4114.8, y: 3657.6 },
      wall: 'corner-1',
    },
    {
      name: 'the wall is broken after the door: it stays on the first part',
      recipe: addCorner('wall-3', { id: 'corner-1', x: 2000, y: 3657.6 }),
      at: { x: 4114.8, y: 3657.6 },
      wall: 'wall-3',
    },
    {
      name: 'the corner at its end goes: the door stays on the wall as it now runs',
      recipe: removeCorner('wall-4'),
      at: { x: 4114.8, y: 0 },
      wall: 'wall-3',
    },
  ];
  it.each(rows)('$name', ({ name, recipe, at, wall }) => {
    const plan = proveEdit(room, recipe);
    expect(plan.room.openings[0]?.wall).toBe(wall);
    if (name.startsWith('the corner')) return;
    expect(doorPlace(plan)).toEqual({ x: expect.closeTo(at.x, 6), y: expect.closeTo(at.y, 6) });
  });

  it('an opening slides along its wall only, and not off it', () => {
    expect(doorPlace(proveEdit(room, moveItems(['door-1'], { x: -1000, y: 777 })))).toEqual({ x: expect.closeTo(3114.8, 9), y: 3657.6 });
    expect(doorPlace(proveEdit(room, moveItems(['door-1'], { x: -9000, y: 0 })))).toEqual({ x: expect.closeTo(457.2, 9), y: 3657.6 });
  });

  it('a triangle keeps its corners', () => {
    const triangle = proveEdit(room, removeItems(['wall-1', 'door-1']));
    expect(triangle.room.outline.length).toBe(3);
    expect(proveEdit(triangle, removeItems(['wall-2']))).toBe(triangle);
  });

  it('a room that would cross itself is refused with the reason', () => {
    const result = tryEdit(room, 'Move the corner', moveCorner('wall-1', { x: 6000, y: 2000 }));
    expect(result.ok ? null : result.problem.code).toBe('walls-cross');
  });

  it('a wall too short for its door is refused with the reason', () => {
    const result = tryEdit(room, 'Move the corner', moveCorner('wall-3', { x: 500, y: 3657.6 }));
    expect(result.ok ? null : result.problem.code).toBe('opening-off-wall');
  });
});
