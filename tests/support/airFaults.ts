import { FAMILIES } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import type { Fault } from './faults';
import { hoodOf, runOf } from './roomPlan';

const familiesOf = (kind: 'hood' | 'direct' | 'recovery') => FAMILIES.filter(({ vent }) => vent.kind === kind).map(({ id }) => id);
const ALL = FAMILIES.map(({ id }) => id);
const HOOD = familiesOf('hood');
const DIRECT = familiesOf('direct');
const RECOVERY = familiesOf('recovery');

type Air = Plan['air'];
type Duct = Plan['runs'][number]['duct'];

const air =
  (change: Partial<Air>) =>
  (plan: Plan): void =>
    void Object.assign(plan.air, change);
const duct =
  (change: Partial<Duct>) =>
  (plan: Plan): void =>
    void Object.assign(runOf(plan).duct, change);

/** The plan's machine with a sheet of its own, listed as condensing or not. */
function listed(plan: Plan, listedCondensing: boolean | null): void {
  const sheet = FAMILIES.find(({ id }) => id === plan.machines[0]?.sheet);
  if (sheet?.vent.kind !== 'recovery') throw new Error('the machine wins no heat back');
  plan.sheets.push({ ...structuredClone(sheet), id: 'own-sheet', vent: { ...sheet.vent, listedCondensing } });
  for (const machine of plan.machines) machine.sheet = 'own-sheet';
}

/** Faults of the air, each on every family that it can befall. */
export const AIR_FAULTS: readonly Fault[] = [
  {
    name: 'a hood that draws too little',
    families: HOOD,
    change: (plan) => {
      hoodOf(plan).exhaust = 0.1;
      plan.air.makeUp = 0.09;
    },
    expect: ['stop hood-exhaust-enough:hood:machine'],
  },
  {
    name: 'a hood that draws enough for the code in force and too little for those before it',
    families: HOOD,
    change: (plan) => {
      hoodOf(plan).exhaust = 0.4;
      plan.air.makeUp = 0.36;
    },
    expect: ['watch hood-exhaust-enough:hood:machine'],
  },
  {
    name: 'a fifth of the hood’s air blown into the hood',
    families: HOOD,
    change: (plan) => {
      Object.assign(hoodOf(plan), { exhaust: 1.5, cavityAir: 0.3 });
      plan.air.makeUp = 1.35;
    },
    expect: ['stop hood-exhaust-enough:cavity:hood:machine'],
  },
  {
    name: 'a hood of which nobody knows what is blown into it',
    families: HOOD,
    change: (plan) => void (hoodOf(plan).cavityAir = null),
    expect: ['ask hood-exhaust-enough:hood:machine'],
  },
  {
    name: 'a hood of which nobody knows what it draws',
    families: HOOD,
    change: (plan) => void (hoodOf(plan).exhaust = null),
    expect: [
      'ask hood-exhaust-enough:hood:machine',
      'ask make-up-balances:negative:machine',
      'ask room-humidity:machine',
      'ask walls-dry:wall:machine',
      'ask walls-dry:ceiling:machine',
    ],
  },
  {
    name: 'a room without a hood that draws little',
    families: RECOVERY,
    change: air({ roomExhaust: 0.05, makeUp: 0.045 }),
    expect: ['stop room-humidity:machine', 'watch make-up-tempered:warmed:machine'],
  },
  {
    name: 'a machine that wins back its heat of which nobody knows the listing',
    families: RECOVERY,
    change: (plan) => listed(plan, null),
    expect: ['ask hood-where-needed:machine', 'ask waived-exhaust-enough:machine'],
  },
  {
    name: 'a machine that wins back its heat and is not listed, in a room that draws enough',
    families: RECOVERY,
    change: (plan) => listed(plan, false),
    expect: ['stop hood-where-needed:machine'],
  },
  {
    name: 'no hood, waived for a room that draws little',
    families: HOOD,
    change: (plan) => {
      plan.hoods = [];
      Object.assign(plan.air, { hoodWaived: true, roomExhaust: 0.04, makeUp: 0.036, outdoorC: 24 });
    },
    expect: ['stop waived-exhaust-enough:machine', 'watch room-humidity:machine', 'watch make-up-tempered:warmed:machine'],
  },
  {
    name: 'more air blown in than drawn out',
    families: ALL,
    change: air({ makeUp: 2 }),
    expect: ['stop make-up-balances:negative:machine'],
  },
  {
    name: 'make-up air that does not start with the exhaust',
    families: ALL,
    change: air({ interlocked: false }),
    expect: ['stop make-up-balances:interlock:machine'],
  },
  {
    name: 'make-up air of which nobody knows when it starts',
    families: ALL,
    change: air({ interlocked: null }),
    expect: ['ask make-up-balances:interlock:machine'],
  },
  {
    name: 'two thirds of the make-up air',
    families: ALL,
    change: (plan) => void (plan.air.makeUp = (plan.air.makeUp ?? 0) * 0.667),
    expect: ['watch make-up-balances:make-up:machine'],
  },
  {
    name: 'make-up air as cold as outside',
    families: ALL,
    change: air({ makeUpC: 4 }),
    expect: ['stop make-up-tempered:make-up:machine', 'stop make-up-tempered:difference:machine'],
  },
  {
    name: 'a hot room',
    families: [...HOOD, ...DIRECT],
    change: air({ roomC: 29.5, makeUpC: 24 }),
    expect: ['watch make-up-tempered:work-area:machine'],
  },
  {
    name: 'a room that its machine warms too much',
    families: RECOVERY,
    change: air({ roomC: 28, makeUpC: 25 }),
    expect: ['watch make-up-tempered:warmed:machine'],
  },
  {
    name: 'moist make-up air',
    families: HOOD,
    change: air({ makeUpC: 24, makeUpHumidity: 0.75 }),
    expect: ['watch room-humidity:machine'],
  },
  {
    name: 'a bare outer wall',
    families: ALL,
    change: air({ wallConductance: 5, outdoorC: -20 }),
    expect: ['watch walls-dry:wall:machine'],
  },
  {
    name: 'a bare ceiling',
    families: ALL,
    change: air({ ceilingConductance: 5, outdoorC: -20 }),
    expect: ['watch walls-dry:ceiling:machine'],
  },
  {
    name: 'a duct as wide as it need not be',
    families: DIRECT,
    change: (plan) => void (runOf(plan).diameter = 220),
    expect: ['watch run-speed:run:machine'],
  },
  {
    name: 'more air than the fan moves',
    families: DIRECT,
    change: (plan) => {
      duct({ airflow: 0.29 })(plan);
      plan.air.makeUp = 0.26;
    },
    expect: ['stop fan-reaches-airflow:run:machine', 'watch run-speed:run:machine'],
  },
  {
    name: 'a level run',
    families: DIRECT,
    change: (plan) => {
      for (const point of runOf(plan).points) point.z = 2600;
    },
    expect: ['watch run-drains:fall:run:machine'],
  },
  {
    name: 'a run that sags without a drain',
    families: DIRECT,
    change: (plan) => {
      const run = runOf(plan);
      const [first, last] = run.points;
      if (first === undefined || last === undefined) throw new Error('the run has one leg');
      const middle = { x: first.x, y: (first.y + last.y) / 2, z: first.z - 100 };
      run.points = [first, middle, last];
      run.duct.lowPointDrain = false;
    },
    expect: ['stop run-drains:low-point:run:machine'],
  },
  {
    name: 'an intake beside the outlet',
    families: DIRECT,
    change: duct({ intakeDistance: 1000 }),
    expect: ['stop outlet-distances:intake:run:machine'],
  },
  {
    name: 'an outlet close to the wall',
    families: DIRECT,
    change: (plan) => {
      const [first, last] = runOf(plan).points;
      if (first === undefined || last === undefined) throw new Error('the run has one leg');
      const back = (last.y - first.y) / Math.abs(last.y - first.y);
      last.y -= 500 * back;
      last.z -= 10;
    },
    expect: ['stop outlet-distances:wall:run:machine'],
  },
  {
    name: 'an outlet low above the ground',
    families: DIRECT,
    change: duct({ aboveGround: 2000 }),
    expect: ['stop outlet-distances:ground:run:machine'],
  },
  {
    name: 'an outlet of which nobody knows how high it stands',
    families: DIRECT,
    change: duct({ aboveGround: null }),
    expect: ['ask outlet-distances:ground:run:machine'],
  },
  {
    name: 'a duct of aluminum',
    families: DIRECT,
    change: duct({ material: 'aluminum' }),
    expect: ['watch duct-material:stainless:run:machine'],
  },
  {
    name: 'a duct of PVC',
    families: DIRECT,
    change: duct({ material: 'pvc' }),
    expect: ['stop duct-material:metal:run:machine'],
  },
  {
    name: 'a duct whose joints leak',
    families: DIRECT,
    change: duct({ sealed: false }),
    expect: ['stop duct-material:joints:run:machine'],
  },
  {
    name: 'a duct of which nobody knows whether its joints are tight',
    families: DIRECT,
    change: duct({ sealed: null }),
    expect: ['ask duct-material:joints:run:machine'],
  },
  {
    name: 'a bare duct out through the wall',
    families: DIRECT,
    change: duct({ insulation: 0 }),
    expect: ['watch duct-wall-dry:run:machine'],
  },
  {
    name: 'a bare duct through the cold',
    families: DIRECT,
    change: (plan) => {
      duct({ insulation: 0 })(plan);
      plan.air.ductAirC = -10;
    },
    expect: ['watch duct-wall-dry:run:machine'],
  },
];
