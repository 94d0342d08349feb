import {
  type Check,
  type FigureReading,
  holdReading,
  type Measurement,
  machinesPlace,
  type Repair,
  readFigure,
  type Source,
  TOLERANCE,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { type Formatter, formatNumber } from '../../../units';
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
    name: 'whether the dish room draws air in',
    limit: 0,
    say: (value, f) =>
      value > TOLERANCE
        ? `The dish room draws ${f.airflow(value)} out of the rooms about it, so its vapour stays in it.`
        : `${sayBlown(value, f)}, so its vapour goes into the next rooms. Blow in less make-up air, or draw out more.`,
    ...about,
  });
}

const sayBlown = (value: number, f: Formatter) =>
  value < -TOLERANCE
    ? `The dish room blows ${f.airflow(-value)} out into the rooms about it`
    : 'As much air is blown into the dish room as is drawn out';

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
      say: (f) =>
        makeUp >= limit - TOLERANCE
          ? `${f.airflow(makeUp)} of make-up air stand against ${f.airflow(exhaust)} of exhaust.`
          : `${f.airflow(makeUp)} of make-up air stand against ${f.airflow(exhaust)} of exhaust, and about ${f.airflow(limit)} are looked for: bring in ${f.airflow(limit - makeUp)} more.`,
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
    const ask = { input: 'interlock of make-up air and exhaust', path: ['air', 'interlocked'] };
    return [{ ask, say: () => 'Does the make-up air start and run together with the exhaust?', ...common }];
  }
  return [
    {
      say: () =>
        interlocked
          ? 'The make-up air starts and runs together with the exhaust.'
          : 'The make-up air does not start with the exhaust: one without the other blows vapour into the next rooms or starves the hood. Interlock the two.',
      repairs: () => (interlocked ? [] : [interlock]),
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
  label: () => 'Call for make-up air that starts with the exhaust',
  edit: (draft) => {
    draft.air.interlocked = true;
  },
};

/** Where hoods and runs draw: about three quarters of the exhaust are theirs. Nothing while the balance asks. */
function measureShare(scene: Scene, about: About): Measurement[] {
  return readFigure(exhaustShareFigure, scene)
    .filter(({ value }) => value !== null)
    .map((share) =>
      holdReading(share, {
        part: 'at-machines',
        name: 'the part of the exhaust at the machines',
        limit: EXHAUST_AT_MACHINES.min,
        unit: 'share',
        relation: 'at-least',
        severity: 'watch',
        source: {
          kind: 'published',
          document: 'UFC 3-410-01FA (15 May 2003), superseded',
          section: '4-10.1: about 75 % of the exhaust at the dishwasher, the rest at the ceiling',
          confidence: 'read',
        },
        say: (value) =>
          `${formatNumber(100 * value)} % of the exhaust is drawn at the machines, the rest at the ceiling${
            value >= (EXHAUST_AT_MACHINES.min ?? 0) - TOLERANCE
              ? ''
              : '; about 75 % is looked for. Draw more at the machine and less at the ceiling'
          }.`,
        ...about,
      }),
    );
}
