import { produce } from 'immer';
import type { Plan } from '../../../../src/plan';
import { deriveScene } from '../../../../src/scene';
import { check } from '../../../../src/topics/line/checks/one-way-flow';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { FREE, linePlan, tableOf } from '../../../support/linePlan';

const clear = { verdict: 'clear', subjects: ['machine'], measured: 0, limit: 0 } satisfies ExpectedFinding;
const apart = { ...clear, part: 'shared' } satisfies ExpectedFinding;

/** Clean shelving put up before the soiled table of a straight line, so far from the line of the racks. */
const shelvingBefore = (away: number) =>
  linePlan({ configuration: 'straight' }, (plan) => {
    shortClean(plan);
    plan.things = [{ ...cart, id: 'clean-shelving', kind: 'shelving', ...storageAt(away), ware: 'clean' }];
  });
/** Its storage is found within 3 m of its end. */
function shortClean(plan: Plan): void {
  tableOf(plan, 'clean').legs = [{ length: 300, turnDeg: 0 }];
  tableOf(plan, 'clean').fittings = [];
}
const line = deriveScene(linePlan({ configuration: 'straight' }, shortClean)).lines[0]!;
const [joint, end] = [line.soiled!.path[0]!, line.clean!.path[1]!];
/** 1.5 m beyond the soiled joint; the racks go along one height. */
const storageAt = (away: number) => ({ x: joint.x - 1500, y: joint.y + away });

/**
 * From the end of the clean table the way slants before the machine. It shares the floor of the soiled table, 711.2 beside it and
 * about its end, but for the last 711.2 before the joint: from the circle about that place on.
 */
function sharedLength(away: number, width = 711.2): number {
  const from = { x: joint.x - width, y: joint.y };
  const [dx, dy] = [storageAt(away).x - end.x, away];
  const size = Math.hypot(dx, dy);
  const middle = ((from.x - end.x) * dx) / size;
  const beside = Math.abs((from.x - end.x) * dy) / size;
  return size - (middle - Math.sqrt(width * width - beside * beside));
}

const cart = {
  id: 'cart',
  kind: 'cart',
  name: '',
  rotationDeg: 0,
  width: 500,
  depth: 700,
  height: 900,
  ware: 'soiled',
  clearBelow: null,
  sealed: null,
  basins: null,
} as const;

describeCheck(check, [
  {
    name: 'soiled from the left, clean away to the right',
    plan: linePlan({ configuration: 'straight' }),
    expect: [
      { ...clear, says: 'The way of soiled ware to the machine crosses no way of clean ware.' },
      { ...apart, says: 'Soiled and clean ware go over no floor in common.' },
    ],
  },
  { name: 'around a corner', plan: linePlan(), expect: [clear, apart] },
  {
    // Soiled ware comes from a cart before the machine, clean ware goes to shelving on the soiled side: both pass the same floor.
    name: 'clean storage on the soiled side',
    plan: linePlan({ configuration: 'straight' }, (plan) => {
      const { x, y } = plan.machines[0]!;
      const soiled = tableOf(plan, 'soiled');
      soiled.legs = [{ length: 1500, turnDeg: 0 }];
      soiled.fittings = [];
      tableOf(plan, 'clean').legs = [{ length: 300, turnDeg: 0 }];
      tableOf(plan, 'clean').fittings = [];
      plan.things = [
        { ...cart, x: x - 300, y: y + 1700 },
        { ...cart, id: 'clean-shelving', kind: 'shelving', x: x - 1500, y: y + 1000, ware: 'clean' },
      ];
    }),
    expect: [
      {
        ...clear,
        verdict: 'stop',
        measured: 1,
        says: 'Soiled and clean ware cross at 1 place. Give drop-off and clean storage their own sides.',
      },
    ],
  },
  {
    name: 'clean ware goes along before the soiled table',
    plan: shelvingBefore(600),
    expect: [
      {
        ...apart,
        verdict: 'watch',
        measured: sharedLength(600),
        says: 'Soiled and clean ware share 4′ 10 ¾″ of floor at 1 place. Move the drop-off or the clean storage, or part them by time and by a cart of their own.',
      },
      clear,
    ],
  },
  {
    name: 'a wider person shares more of it',
    plan: produce(shelvingBefore(600), ({ settings }) => void (settings.personWidth = 800)),
    expect: [{ ...apart, verdict: 'watch', measured: sharedLength(600, 800) }, clear],
  },
  { name: 'farther than a person from it', plan: shelvingBefore(2500), expect: [clear, apart] },
  {
    name: 'without a clean table there is no clean way to cross',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').place = FREE)),
    expect: [clear],
  },
]);
