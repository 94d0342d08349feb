import {
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  type Message,
  machinesPlace,
  type NoParams,
  type Repair,
  readFigure,
  type Source,
  TOLERANCE,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { EXHAUST_AT_MACHINES } from '../../hood';
import { rule as exhaustShareFigure } from '../figures/exhaust-share';
import { rule as totalExhaustFigure } from '../figures/total-exhaust';
import { rule as transferAirFigure } from '../figures/transfer-air';
import { MOST_DEFICIT_SHARE } from '../formulas/makeUpAir';

export const check: Check = {
  id: 'make-up-balances',
  order: 460,
  title: 'Make-up air balances the exhaust',
  group: 'air',
  unit: 'm3/s',
  relation: 'more-than',
  source: {
    kind: 'published',
    document: 'VA HVAC design manual (hospitals)',
    section: '3.12.5 and 3.12.6: scullery and dishwashing are below the rest of the kitchen',
    confidence: 'read',
  },
  why: 'A little less comes in than goes out, so vapour stays in the dish room; far less, and the hood starves and doors stand open or slam. The clean end wants the fresh air, the soiled end the exhaust. A diffuser within 12 ft of a hood blows away from it (Minn. R. 1346.0508).',
  measure: (scene) => readFigure(transferAirFigure, scene).flatMap((transfer) => measureRoom(scene, transfer)),
};

/** Airflows in m³/s, shares of 1. */
export interface MakeUpBalancesMessages {
  'make-up-balances/what-negative': NoParams;
  'make-up-balances/draws-in': { airflow: number };
  'make-up-balances/blows-out': { airflow: number };
  'make-up-balances/even': NoParams;
  'make-up-balances/enough': { makeUp: number; exhaust: number };
  'make-up-balances/too-little': { makeUp: number; exhaust: number; wanted: number };
  'make-up-balances/ask-interlock': NoParams;
  'make-up-balances/interlock-unknown': NoParams;
  'make-up-balances/interlocked': NoParams;
  'make-up-balances/not-interlocked': NoParams;
  'make-up-balances/repair-interlock-make-up': NoParams;
  'make-up-balances/what-at-machines': NoParams;
  'make-up-balances/drawn-at-machines': { share: number };
  'make-up-balances/drawn-at-ceiling': { share: number; wanted: number };
}

const say = createMessages<MakeUpBalancesMessages>();

function measureRoom(scene: Scene, transfer: FigureReading): Measurement[] {
  const about = {
    subjects: scene.machines.map(({ machine }) => machine.id),
    place: machinesPlace(scene),
  };
  return [measureDraw(transfer, about), ...measureMakeUp(scene, about), ...measureInterlock(scene, about), ...measureShare(scene, about)];
}

type About = Pick<Measurement, 'place'> & { subjects: string[] };

/** The dish room is below the rooms about it. */
function measureDraw(transfer: FigureReading, about: About): Measurement {
  return holdReading(transfer, {
    part: 'negative',
    what: say('make-up-balances/what-negative'),
    limit: 0,
    message: sayDraw,
    ...about,
  });
}

function sayDraw(airflow: number): Message {
  if (airflow > TOLERANCE) return say('make-up-balances/draws-in', { airflow });
  return airflow < -TOLERANCE ? say('make-up-balances/blows-out', { airflow: -airflow }) : say('make-up-balances/even');
}

/** At most about a fifth of the exhaust comes from the next rooms: an opinion of plan reviewers, so only a watch. Nothing while the balance asks. */
function measureMakeUp(scene: Scene, about: About): Measurement[] {
  const exhaust = readFigure(totalExhaustFigure, scene)[0]?.value;
  const makeUp = scene.plan.air.makeUp;
  if (exhaust == null || makeUp === null) return [];
  const limit = exhaust * (1 - MOST_DEFICIT_SHARE);
  return [
    {
      part: 'make-up',
      value: makeUp,
      limit,
      relation: 'at-least',
      severity: 'watch',
      source: {
        kind: 'published',
        document: 'International Mechanical Code 2006',
        section: '508.1: about as much as is drawn out; that up to 20 % may be missing is an opinion of plan reviewers',
        confidence: 'secondary',
      },
      message:
        makeUp >= limit - TOLERANCE
          ? say('make-up-balances/enough', { makeUp, exhaust })
          : say('make-up-balances/too-little', { makeUp, exhaust, wanted: limit }),
      ...about,
    },
  ];
}

/** Make-up air starts and runs with the exhaust. Nothing where none is blown in, or while the balance asks how much. */
function measureInterlock({ plan }: Scene, about: About): Measurement[] {
  const { makeUp, interlocked } = plan.air;
  if (makeUp === null || makeUp === 0) return [];
  const common = {
    part: 'interlock',
    value: interlocked,
    limit: true,
    unit: 'yes-no',
    relation: 'equals',
    source: INTERLOCK,
    ...about,
  } as const;
  if (interlocked === null) {
    const ask = { input: say('make-up-balances/ask-interlock'), path: ['air', 'interlocked'] };
    return [{ ask, message: say('make-up-balances/interlock-unknown'), ...common }];
  }
  if (interlocked) return [{ message: say('make-up-balances/interlocked'), ...common }];
  return [
    {
      message: say('make-up-balances/not-interlocked'),
      repairs: { ids: ['interlock-make-up'], find: () => [interlock] },
      ...common,
    },
  ];
}

const INTERLOCK: Source = {
  kind: 'published',
  document: 'NYC Mechanical Code and Minnesota Rules 1346.0508',
  section: '508.1: mechanical make-up air is interlocked; it starts and runs with the exhaust by itself',
  confidence: 'read',
};

const interlock: Repair = {
  id: 'interlock-make-up',
  label: say('make-up-balances/repair-interlock-make-up'),
  edit: (draft) => {
    draft.air.interlocked = true;
  },
};

const LEAST_AT_MACHINES = EXHAUST_AT_MACHINES.min ?? 0;

/** Where hoods and runs draw: about three quarters of the exhaust are theirs. Nothing while the balance asks. */
function measureShare(scene: Scene, about: About): Measurement[] {
  return readFigure(exhaustShareFigure, scene)
    .filter(({ value }) => value !== null)
    .map((share) =>
      holdReading(share, {
        part: 'at-machines',
        what: say('make-up-balances/what-at-machines'),
        limit: LEAST_AT_MACHINES,
        unit: 'share',
        relation: 'at-least',
        severity: 'watch',
        source: {
          kind: 'published',
          document: 'UFC 3-410-01FA (15 May 2003), superseded',
          section: '4-10.1: about 75 % of the exhaust at the dishwasher, the rest at the ceiling',
          confidence: 'read',
        },
        message: (share) =>
          share >= LEAST_AT_MACHINES - TOLERANCE
            ? say('make-up-balances/drawn-at-machines', { share })
            : say('make-up-balances/drawn-at-ceiling', { share, wanted: LEAST_AT_MACHINES }),
        ...about,
      }),
    );
}
