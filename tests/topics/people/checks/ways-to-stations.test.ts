import { createPlan, type Plan } from '../../../../src/plan';
import { check } from '../../../../src/topics/people/checks/ways-to-stations';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { addThing, addThingBetween, clearAway } from '../../../support/roomPlan';

const PLACES = {
  'drop-off': 'drop-off',
  'pre-rinse': 'pre-rinse',
  'clean-landing': 'clean-landing',
  storage: 'clean-shelving',
  'hand-sink': 'hand-sink',
} as const;
type Part = keyof typeof PLACES;

const of = (part: Part, verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding & { part: Part } => ({
  part,
  verdict,
  subjects: [PLACES[part]],
  measured,
  limit: 711.2,
  within: 1e-4,
});
const carts = (verdict: ExpectedFinding['verdict'], measured: number): ExpectedFinding => ({
  part: 'beside-carts',
  verdict,
  subjects: ['cart'],
  measured,
  limit: 711.2,
  within: 1e-4,
});

/** Every place reached by 36 in or more, but those told, which come first as the worst. */
function all(parts: readonly Part[], ...others: (ExpectedFinding & { part: Part })[]): ExpectedFinding[] {
  const told = new Set(others.map(({ part }) => part));
  return [...others, ...parts.filter((part) => !told.has(part)).map((part) => of(part, 'clear', 914.4))];
}
const ALL = Object.keys(PLACES) as Part[];
const DRY = ALL.filter((part) => part !== 'hand-sink');

/** The room without its sink and bins, and a wall of benches around the drop-off but for a gap at its lower right. */
const pen = (gap: number, change: (plan: Plan) => void = () => {}) =>
  linePlan({}, (plan) => {
    clearAway(plan);
    addThingBetween(plan, 'bench', [0, 1800], [1700, 2000], { kind: 'work-table' });
    addThingBetween(plan, 'post', [1500, 767 + gap], [1700, 1800], { kind: 'work-table' });
    change(plan);
  });

const cartAt = (x: number, y: number, rotationDeg: number) =>
  linePlan({}, (plan) => {
    clearAway(plan);
    addThing(plan, 'cart', x, y, 600, 600, { rotationDeg });
  });

/** 28 in: 29 CFR 1910.36(g)(2) (read). 36 in: plan review guide (read). */
describeCheck(check, [
  { name: 'a whole line', plan: linePlan(), expect: all(ALL) },
  {
    name: 'a gap of 30 in to the drop-off',
    plan: pen(762),
    expect: all(DRY, {
      ...of('drop-off', 'watch', 762),
      says: 'The way to the drop-off narrows to 2′ 6″ between the soiled table and work table 7; 3′ 0″ is wanted in an aisle.',
    }),
  },
  {
    name: 'a gap of 27 in to the drop-off',
    plan: pen(685.8),
    expect: all(DRY, {
      ...of('drop-off', 'stop', 685.8),
      says: 'The way to the drop-off narrows to 2′ 3″ between the soiled table and work table 7; 2′ 4″ is needed. Make room there.',
    }),
  },
  {
    name: 'a gap of 34 in, and a person who needs 35',
    plan: pen(863.6, ({ settings }) => void (settings.personWidth = 889)),
    expect: all(DRY, of('drop-off', 'stop', 863.6)).map((finding) => ({ ...finding, limit: 889 })),
  },
  {
    name: 'a gap of 27 in, and a setting of 20 in: an exit access counts all the same',
    plan: pen(685.8, ({ settings }) => void (settings.personWidth = 508)),
    expect: all(DRY, {
      ...of('drop-off', 'stop', 685.8),
      says: 'The way to the drop-off narrows to 2′ 3″ between the soiled table and work table 7; 2′ 4″ is needed to get out, whatever the plan’s setting of 1′ 8″. Make room there.',
    }),
  },
  {
    name: 'a gap of 36 in, and an aisle of 42 in wanted for one worker',
    plan: pen(914.4, ({ settings }) => void (settings.aisleWidth = 1066.8)),
    expect: all(DRY, {
      ...of('drop-off', 'watch', 914.4),
      says: 'The way to the drop-off narrows to 3′ 0″ between the soiled table and work table 7; 3′ 6″ is wanted in an aisle by the setting of this plan.',
    }).map((finding) => (finding.verdict === 'clear' ? { ...finding, measured: 1066.8 } : finding)),
  },
  {
    name: 'a way in of 30 in, as wide as that to the places behind: said of the way in alone',
    plan: linePlan({}, (plan) => {
      clearAway(plan);
      addThingBetween(plan, 'bench', [0, 2150], [1500, 2440], { kind: 'work-table' });
      addThingBetween(plan, 'long-bench', [2262, 2150], [4045.5, 2440], { kind: 'work-table' });
    }),
    expect: all(DRY),
  },
  { name: 'a cart that rolls out into the open', plan: cartAt(1600, 3000, 90), expect: [...all(DRY), carts('clear', 914.4)] },
  // Before the drop-off, whose edge is at 767: from 1700 on it stands clear, rolled out it reaches to 1100.
  {
    name: 'a cart that rolls out to where the person at the drop-off stands',
    plan: cartAt(1380, 2000, 180),
    expect: [
      {
        ...carts('watch', 0),
        says: 'With the carts rolled out by their depth, 0″ is left on the way to the drop-off; 2′ 4″ is needed. Give the carts a place aside.',
      },
      ...all(DRY),
    ],
  },
  {
    name: 'shelving with its front to the wall',
    plan: linePlan({}, ({ things }) => {
      if (things[0] !== undefined) things[0].rotationDeg += 180;
    }),
    expect: all(ALL, {
      ...of('storage', 'stop', 0),
      within: 30,
    }),
  },
  { name: 'no door: the operator’s way asks for it', plan: linePlan({}, ({ room }) => void (room.openings = [])), expect: [] },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
