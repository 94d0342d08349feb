import { expect, test } from 'vitest';
import { area } from '../../../src/geometry';
import { type Plan, UNKNOWN_DUCT } from '../../../src/plan';
import { deriveScene, type SolidKind } from '../../../src/scene';
import { first, linePlan, near, roomPlan, table } from '../plans';

/** Owner, kind, from, to and area in plan of every body. */
const bodies = (plan: Plan) =>
  deriveScene(plan).solids.map(({ owner, kind, zFrom, zTo, pieces }) => [
    owner,
    kind,
    zFrom,
    zTo,
    Math.round(pieces.reduce((sum, piece) => sum + area(piece), 0)),
  ]);

const ofKind = (plan: Plan, kind: SolidKind) => deriveScene(plan).solids.filter((solid) => solid.kind === kind);

test('a table: deck with its rims, bowl, backsplash, overshelf', () => {
  const plan = roomPlan((draft) => {
    draft.tables = [
      table({
        backsplash: 250,
        fittings: [
          { id: 'sink', kind: 'sink', at: 800, length: 500, width: 400, bowlDepth: 200, spray: true, rackSlide: null, waste: null },
          { id: 'shelf', kind: 'overshelf', at: 1000, length: 600, depth: 300, height: 1400 },
          { id: 'landing', kind: 'landing', at: 300, length: 500 },
        ],
      }),
    ];
  });
  // Deck from 864 at the joint to 884 at the far end.
  expect(bodies(plan)).toEqual([
    ['table', 'table', 814, 959, 2000 * 762],
    ['table', 'table', 664, 864, 500 * 400],
    ['table', 'backsplash', 864, 1134, 2000 * 40],
    ['table', 'overshelf', 1400, 1750, 600 * 300],
  ]);
  const [splash] = ofKind(plan, 'backsplash');
  expect(Math.min(...(splash?.pieces.flat().map(({ y }) => y) ?? []))).toBe(2511);
});

test('a table of unknown height stands at the track of its machine, a free one at 34 in', () => {
  const joined = linePlan({}, (draft) => {
    for (const item of draft.tables)
      Object.assign(item, { deck: { kind: 'fall', jointHeight: null, fall: null }, fittings: [], backsplash: 0 });
  });
  const track = first(deriveScene(joined).machines).sheet.deckHeight;
  expect(ofKind(joined, 'table').map(({ zFrom, zTo }) => [zFrom, zTo])).toEqual([
    [track - 50, track + 75],
    [track - 50, track + 75],
  ]);
  const free = roomPlan((draft) => void (draft.tables = [table({ deck: { kind: 'heights', heights: [null, null] } })]));
  expect(bodies(free)).toEqual([['table', 'table', 813.6, 938.6, 2000 * 762]]);
});

test('a machine: body, open doors, and the box of a heat recovery', () => {
  for (const family of ['recirculating-hot-water', 'heat-recovery']) {
    const scene = deriveScene(linePlan({ family }));
    const { sheet } = first(scene.machines);
    const own = scene.solids.filter(({ owner }) => owner === 'machine');
    expect(own.find(({ kind }) => kind === 'machine')).toMatchObject({ zFrom: 0, zTo: sheet.height });
    expect(own.filter(({ kind }) => kind === 'door-lift').map(({ zFrom, zTo }) => [zFrom, zTo])).toEqual(
      sheet.doorLiftHeight > sheet.height ? [[sheet.height, sheet.doorLiftHeight]] : [],
    );
    const box = sheet.vent.kind === 'recovery' ? [sheet.vent.box] : [];
    const found = own.filter(({ kind }) => kind === 'recovery-box');
    expect(found.map(({ zFrom, zTo, pieces }) => [zFrom, zTo, area(first(pieces))])).toEqual(
      box.map(({ zFrom, zTo, width, depth }) => [zFrom, zTo, near(width * depth, 3)]),
    );
  }
});

test('a hood without a lip height has no body', () => {
  const plan = linePlan({ family: 'tall-door' });
  const hood = first(plan.hoods);
  expect(ofKind(plan, 'hood')).toMatchObject([{ zFrom: hood.lipHeight, zTo: (hood.lipHeight ?? 0) + hood.height }]);
  expect(ofKind({ ...plan, hoods: [{ ...hood, lipHeight: null }] }, 'hood')).toEqual([]);
});

test('a run: a prism a leg, upright or lying', () => {
  const plan = linePlan({ family: 'tall-door' }, (draft) => {
    const points = [
      { x: 100, y: 200, z: 1500 },
      { x: 100, y: 200, z: 2500 },
      { x: 1100, y: 200, z: 2500 },
      { x: 1100, y: 1200, z: 2600 },
    ];
    draft.runs = [{ id: 'run', machine: 'machine', points, diameter: 200, fan: null, outlet: 'wall', duct: UNKNOWN_DUCT }];
  });
  expect(ofKind(plan, 'run').map(({ zFrom, zTo, pieces }) => [zFrom, zTo, Math.round(area(first(pieces)))])).toEqual([
    [1500, 2500, 200 * 200],
    [2400, 2600, 1000 * 200],
    [2400, 2700, 1000 * 200],
  ]);
});

test('marks: machine, its tables soiled first, free tables, hoods, runs, things', () => {
  const plan = linePlan({ family: 'tall-door', hand: 'right-to-left' }, (draft) => {
    draft.tables = [table({ id: 'free' }), ...draft.tables.toReversed()];
    draft.runs = [
      { id: 'run', machine: 'machine', points: [{ x: 0, y: 0, z: 2500 }], diameter: 200, fan: null, outlet: 'roof', duct: UNKNOWN_DUCT },
    ];
  });
  const marks = deriveScene(plan).marks;
  expect(
    Object.entries(marks)
      .sort((a, b) => Number(a[1]) - Number(b[1]))
      .map(([id]) => id),
  ).toEqual(['machine', 'soiled-table', 'clean-table', 'free', 'hood', 'run', 'clean-shelving', 'hand-sink', 'hand-sink-bin', 'waste-bin']);
});
