import type { Thing } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/three-compartments';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addThing } from '../../../support/roomPlan';
import { THREE_BOWLS } from '../../../support/threeBowls';

const BASINS: NonNullable<Thing['basins']> = { ...THREE_BOWLS, sanitizing: 'hot-water' };
const sink = (change: Partial<NonNullable<Thing['basins']>> | null) =>
  linePlan({}, (plan) => {
    const basins = change === null ? null : { ...BASINS, ...change };
    addThing(plan, 'sink', 2500, 2500, 2300, 700, { kind: 'three-compartment-sink', clearBelow: 152.4, basins });
  });

const PARTS = {
  bowls: [3, 3],
  boards: [2, 2],
  'bowl-size': [457.2, 457.2],
  'bowl-depth': [304.8, 304.8],
  'board-length': [457.2, 457.2],
} as const;
type Part = keyof typeof PARTS;

/** Every part clear but those told; these come first, as the worst. */
function all(...others: (ExpectedFinding & { part: Part })[]): ExpectedFinding[] {
  const told = new Set(others.map(({ part }) => part));
  const rest = (Object.keys(PARTS) as Part[]).filter((part) => !told.has(part));
  return [
    ...others,
    ...rest.map(
      (part): ExpectedFinding => ({ part, verdict: 'clear', subjects: ['sink'], measured: PARTS[part][0], limit: PARTS[part][1] }),
    ),
  ];
}
const of = <P extends Part>(part: P, verdict: ExpectedFinding['verdict'], measured: number | null) => ({
  part,
  verdict,
  subjects: ['sink'],
  measured,
});
const ask = <P extends Part>(part: P, asks: string) => ({ ...of(part, 'ask', null), asks });

/** Three bowls, two boards: Cal. HSC §114099 (read). 18 × 18 × 12 in with boards of 18 in: county guides (memory). */
describeCheck(check, [
  { name: '3 bowls of 18 × 18 × 12 in, 2 boards', plan: sink({}), expect: all() },
  {
    name: '2 bowls',
    plan: sink({ count: 2 }),
    expect: all({ ...of('bowls', 'stop', 2), says: 'The three-compartment sink has 2 bowls; 3 are needed. Take one that has them.' }),
  },
  { name: 'one board', plan: sink({ rightBoard: 0, waste: 'indirect', sanitizing: 'hot-water' }), expect: all(of('boards', 'stop', 1)) },
  {
    name: 'no board',
    plan: sink({ leftBoard: 0, rightBoard: 0, waste: 'indirect', sanitizing: 'hot-water' }),
    expect: all(of('boards', 'stop', 0)).filter(({ part }) => part !== 'board-length'),
  },
  {
    name: 'a bowl of 16 in',
    plan: sink({ width: 406.4 }),
    expect: all({
      ...of('bowl-size', 'watch', 406.4),
      says: 'The bowls of the three-compartment sink are 1′ 4″ wide; 1′ 6″ is usual. See that the largest item finds room.',
    }),
  },
  { name: 'a bowl 10 in deep', plan: sink({ depth: 254 }), expect: all(of('bowl-depth', 'watch', 254)) },
  { name: 'a board of 12 in', plan: sink({ leftBoard: 304.8 }), expect: all(of('board-length', 'watch', 304.8)) },
  { name: 'the depth is not known', plan: sink({ depth: null }), expect: all(ask('bowl-depth', 'things.4.basins.depth')) },
  {
    name: 'nothing of it is known',
    plan: sink(null),
    expect: all(
      { ...ask('bowls', 'things.4.basins'), says: 'Say the bowls and boards of the three-compartment sink.' },
      ask('boards', 'things.4.basins'),
      ask('bowl-size', 'things.4.basins'),
      ask('bowl-depth', 'things.4.basins'),
    ).filter(({ part }) => part !== 'board-length'),
  },
  {
    name: 'one board not known',
    plan: sink({ leftBoard: null }),
    expect: all({
      ...ask('boards', 'things.4.basins.leftBoard'),
      says: 'Say the length of the left drainboard of the three-compartment sink.',
    }).filter(({ part }) => part !== 'board-length'),
  },
  { name: 'no such sink', plan: linePlan(), expect: [] },
]);
