import { describe, expect, test } from 'vitest';
import { type Run, UNKNOWN_DUCT } from '../../../src/plan';
import { deriveScene, type PlacedRun } from '../../../src/scene';
import { first, linePlan } from '../plans';

interface Row {
  name: string;
  family: string;
  /** The points after the collar, from the collar. */
  points: [dx: number, dy: number, dz: number][];
  fanAt?: number;
  length: number;
  bends: [at: number, angleDeg: number][];
  isFanOnRun?: boolean;
}

const ROWS: Row[] = [
  { name: 'straight up through the roof', family: 'direct-vent', points: [[0, 0, 2400]], length: 2400, bends: [] },
  {
    name: 'two elbows',
    family: 'direct-vent',
    points: [
      [0, 0, 600],
      [0, -3000, 600],
      [2000, -3000, 600],
    ],
    fanAt: 5600,
    length: 5600,
    bends: [
      [600, 90],
      [3600, 90],
    ],
    isFanOnRun: true,
  },
  {
    name: 'two elbows and a bend of 45°',
    family: 'direct-vent',
    points: [
      [0, 0, 500],
      [1000, 0, 500],
      [1000, 1000, 500],
      [2000, 2000, 500],
    ],
    fanAt: 4000,
    length: 2500 + 1000 * Math.SQRT2,
    bends: [
      [500, 90],
      [1500, 90],
      [2500, 45],
    ],
    isFanOnRun: false,
  },
  { name: 'leaves the collar sideways: a bend at the collar', family: 'direct-vent', points: [[800, 0, 0]], length: 800, bends: [[0, 90]] },
  { name: 'leaves it aslant', family: 'direct-vent', points: [[300, 0, 300]], length: 300 * Math.SQRT2, bends: [[0, 45]] },
  {
    name: 'points on one straight line are no bends',
    family: 'direct-vent',
    points: [
      [0, 0, 400],
      [0, 0, 900],
    ],
    length: 900,
    bends: [],
  },
  {
    name: 'the collar drawn again',
    family: 'direct-vent',
    points: [
      [0, 0, 0],
      [0, 0, 700],
    ],
    length: 700,
    bends: [],
  },
  {
    name: 'up, across and back down',
    family: 'direct-vent',
    points: [
      [0, 0, 500],
      [0, 400, 500],
      [0, 400, 0],
    ],
    length: 1400,
    bends: [
      [500, 90],
      [900, 90],
    ],
  },
  {
    name: 'no collar: its own points alone',
    family: 'tall-door',
    points: [
      [0, 0, 0],
      [1000, 0, 0],
    ],
    length: 1000,
    bends: [],
  },
];

describe.each(ROWS)('$name', (row) => {
  test.each([0, 90, 211])('machine turned by %d°', (rotationDeg) => {
    const { length, bends, fan } = placed(row, rotationDeg);
    expect(length).toBeCloseTo(row.length, 6);
    expect(bends).toHaveLength(row.bends.length);
    for (const [i, [at, angleDeg]] of row.bends.entries()) {
      expect(bends[i]?.at).toBeCloseTo(at, 6);
      expect(bends[i]?.angleDeg).toBeCloseTo(angleDeg, 6);
    }
    expect(fan?.isOnRun).toBe(row.isFanOnRun);
  });
});

function placed({ family, points, fanAt }: Row, rotationDeg: number): PlacedRun {
  const at = (plan: ReturnType<typeof linePlan>) => first(deriveScene(plan).machines).collar ?? { x: 0, y: 0, z: 0 };
  const turned = linePlan({ family }, (draft) => void (first(draft.machines).rotationDeg = rotationDeg));
  const collar = at(turned);
  const run: Run = {
    id: 'run',
    machine: 'machine',
    points: points.map(([dx, dy, dz]) => ({ x: collar.x + dx, y: collar.y + dy, z: collar.z + dz })),
    diameter: 178,
    fan: fanAt === undefined ? null : { at: fanAt, attitude: 'upright', drainHole: null, cordWay: null },
    outlet: 'roof',
    duct: UNKNOWN_DUCT,
  };
  return first(deriveScene({ ...turned, runs: [run] }).runs);
}

test('the fan lies on the run, and past its end at the end', () => {
  const row = {
    name: '',
    family: 'direct-vent',
    points: [
      [0, 0, 600],
      [0, -3000, 600],
    ] as Row['points'],
    length: 0,
    bends: [],
  };
  const on = placed({ ...row, fanAt: 1600 }, 0);
  const collar = first(on.points);
  expect(on.fan?.point).toEqual({ x: collar.x, y: collar.y - 1000, z: collar.z + 600 });
  expect(placed({ ...row, fanAt: 9000 }, 0).fan).toMatchObject({ point: on.points.at(-1), isOnRun: false });
});

test('a first point drawn a hair beside the collar is left out, not the collar', () => {
  const row = { name: '', family: 'direct-vent', length: 0, bends: [] };
  const straight = placed({ ...row, points: [[0, 0, 700]] }, 0);
  const repeated = placed(
    {
      ...row,
      points: [
        [5e-7, 0, 0],
        [0, 0, 700],
      ],
    },
    0,
  );
  expect(repeated.points).toEqual(straight.points);
});
