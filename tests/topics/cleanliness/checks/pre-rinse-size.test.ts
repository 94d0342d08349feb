import { createPlan, type Fitting } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/pre-rinse-size';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan, tableOf } from '../../../support/linePlan';

type Change = Partial<Extract<Fitting, { kind: 'sink' }>> | Partial<Extract<Fitting, { kind: 'scrap' }>>;

const fitting = (id: string, change: Change, rackSize = 508) =>
  linePlan({}, (plan) => {
    plan.settings.rackSize = rackSize;
    for (const item of tableOf(plan, 'soiled').fittings) if (item.id === id) Object.assign(item, change);
  });
const of = (
  part: string,
  subject: string,
  verdict: ExpectedFinding['verdict'],
  measured: number | null,
  limit: number,
): ExpectedFinding => ({
  part,
  verdict,
  subjects: [subject, 'soiled-table'],
  measured,
  limit,
});
const size = of('size', 'pre-rinse', 'clear', 510, 457.2);
const depth = of('depth', 'pre-rinse', 'clear', 200, 188);
const rack = of('rack', 'pre-rinse', 'clear', 510, 508);
const scrap = of('scrap', 'scrap', 'clear', 200, 200);
/** A bowl of 18 in, which no rack goes into. */
const small = { width: 457.2, length: 457.2 };
const smallSize = of('size', 'pre-rinse', 'clear', 457.2, 457.2);

const covers = of('trough-covers', 'scrap', 'clear', 1, 1);
const inlets = of('trough-inlets', 'scrap', 'clear', 1, 1);
/** A trough as it should be, but for what is changed; so long across the table. */
const trough = (change: Change, width = 460) =>
  fitting('scrap', { troughDepth: 101.6, troughSlope: 1 / 96, troughCovers: 1, troughInlets: 1, width, ...change });
const troughDepth = of('trough-depth', 'scrap', 'clear', 101.6, 100);
const troughFall = of('trough-fall', 'scrap', 'clear', 1 / 96, 0.01);

/** 18 × 18 in, 188 mm, 8 in (200 mm), 4 in (100 mm), 1 %, a cover to 36 in, inlets 48 in apart: UFGS 11400A §2.4.2.6 (read); 20½ in (520 mm): §2.4.2.2 (read). */
describeCheck(check, [
  {
    name: 'a whole line',
    plan: linePlan(),
    expect: [size, depth, { ...rack, says: 'A rack of 1′ 8″ finds room in the bowl of the pre-rinse.' }, scrap],
  },
  {
    name: 'a bowl of 17 in across, with a slide',
    plan: fitting('pre-rinse', { width: 431.8 }),
    expect: [
      {
        ...of('size', 'pre-rinse', 'watch', 431.8, 457.2),
        says: 'The pre-rinse is 1′ 5″ on its shorter side, 1″ less than is wanted. Take a larger one.',
      },
      depth,
      {
        ...of('rack', 'pre-rinse', 'clear', 521, 520),
        says: 'The bowl of the pre-rinse is 1′ 5″ wide and a rack 1′ 8″; a rack slide of 1′ 8 ½″ carries it.',
      },
      scrap,
    ],
  },
  {
    name: 'a bowl of 18 in and no slide',
    plan: fitting('pre-rinse', { ...small, rackSlide: 0 }),
    expect: [
      {
        ...of('rack', 'pre-rinse', 'watch', 0, 520),
        says: 'The bowl of the pre-rinse is 1′ 6″ wide and a rack 1′ 8″, with no rack slide over it. Have one of 1′ 8 ½″ made, or take a larger bowl.',
      },
      smallSize,
      depth,
      scrap,
    ],
  },
  {
    name: 'a bowl of 18 in and a slide of 20 in',
    plan: fitting('pre-rinse', { ...small, rackSlide: 508 }),
    expect: [of('rack', 'pre-rinse', 'watch', 508, 520), smallSize, depth, scrap],
  },
  {
    name: 'a bowl of 18 in, a slide not known',
    plan: fitting('pre-rinse', { ...small, rackSlide: null }),
    expect: [
      {
        ...of('rack', 'pre-rinse', 'ask', null, 520),
        asks: 'tables.0.fittings.1.rackSlide',
        says: 'The bowl of the pre-rinse is 1′ 6″ wide and a rack 1′ 8″: say how wide the rack slide over it is, 0 for none.',
      },
      smallSize,
      depth,
      scrap,
    ],
  },
  {
    name: 'a bowl that takes the rack: its slide is not asked',
    plan: fitting('pre-rinse', { rackSlide: null }),
    expect: [size, depth, rack, scrap],
  },
  {
    name: 'racks of 500 and a slide for them',
    plan: fitting('pre-rinse', { ...small, rackSlide: 512 }, 500),
    expect: [smallSize, depth, of('rack', 'pre-rinse', 'clear', 512, 512), scrap],
  },
  {
    name: 'a bowl 150 deep',
    plan: fitting('pre-rinse', { bowlDepth: 150 }),
    expect: [of('depth', 'pre-rinse', 'watch', 150, 188), size, rack, scrap],
  },
  {
    name: 'a trough 190 wide',
    plan: fitting('scrap', { length: 190 }),
    expect: [of('scrap', 'scrap', 'watch', 190, 200), size, depth, rack],
  },
  {
    name: 'a trough from 4 in on, falling ⅛ in a foot',
    plan: trough({}),
    expect: [
      size,
      depth,
      rack,
      scrap,
      troughDepth,
      troughFall,
      { ...covers, says: 'The scrap trough is 1′ 6 ⅛″ long and has 1 cover: one of 1′ 8″ to each 3′ 0″.' },
      {
        ...inlets,
        says: 'The scrap trough is 1′ 6 ⅛″ long and has 1 water inlet: the first at its shallow end, the next after 4′ 0″ at most.',
      },
    ],
  },
  {
    name: 'a shallow, level trough',
    plan: trough({ troughDepth: 75, troughSlope: 0 }),
    expect: [
      {
        ...of('trough-depth', 'scrap', 'watch', 75, 100),
        says: 'The scrap trough is 2 ¹⁵⁄₁₆″ deep at its shallow end; from 3 ¹⁵⁄₁₆″ on, scraps are washed along it. Have it made deeper.',
      },
      of('trough-fall', 'scrap', 'watch', 0, 0.01),
      size,
      depth,
      rack,
      scrap,
      covers,
      inlets,
    ],
  },
  {
    name: 'a trough whose fall is not known',
    plan: trough({ troughDepth: 100, troughSlope: null }),
    expect: [
      { ...of('trough-fall', 'scrap', 'ask', null, 0.01), asks: 'tables.0.fittings.2.troughSlope' },
      size,
      depth,
      rack,
      scrap,
      of('trough-depth', 'scrap', 'clear', 100, 100),
      covers,
      inlets,
    ],
  },
  {
    name: 'a trough of 36 in: one cover will do',
    plan: trough({}, 914.4),
    expect: [size, depth, rack, scrap, troughDepth, troughFall, covers, inlets],
  },
  {
    name: 'a trough of 37 in with one cover',
    plan: trough({}, 939.8),
    expect: [
      {
        ...of('trough-covers', 'scrap', 'watch', 1, 2),
        says: 'The scrap trough is 3′ 1″ long and has 1 cover; 2 covers are wanted, one of 1′ 8″ to each 3′ 0″.',
      },
      size,
      depth,
      rack,
      scrap,
      troughDepth,
      troughFall,
      inlets,
    ],
  },
  {
    name: 'a trough of 49 in with two covers and no water',
    plan: trough({ troughCovers: 2, troughInlets: 0 }, 1244.6),
    expect: [
      {
        ...of('trough-inlets', 'scrap', 'watch', 0, 2),
        says: 'The scrap trough is 4′ 1″ long and has no water inlets; 2 water inlets are wanted, the first at its shallow end, the next after 4′ 0″ at most.',
      },
      size,
      depth,
      rack,
      scrap,
      troughDepth,
      troughFall,
      of('trough-covers', 'scrap', 'clear', 2, 2),
    ],
  },
  {
    name: 'a trough whose covers and inlets are not known',
    plan: trough({ troughCovers: null, troughInlets: null }),
    expect: [
      { ...of('trough-covers', 'scrap', 'ask', null, 1), asks: 'tables.0.fittings.2.troughCovers' },
      { ...of('trough-inlets', 'scrap', 'ask', null, 1), asks: 'tables.0.fittings.2.troughInlets' },
      size,
      depth,
      rack,
      scrap,
      troughDepth,
      troughFall,
    ],
  },
  {
    name: 'a trough or an opening: not known',
    plan: fitting('scrap', { troughDepth: null }),
    expect: [{ ...of('trough-depth', 'scrap', 'ask', null, 100), asks: 'tables.0.fittings.2.troughDepth' }, size, depth, rack, scrap],
  },
  { name: 'a sink without a spray is no pre-rinse', plan: fitting('pre-rinse', { spray: false, width: 300 }), expect: [scrap] },
  { name: 'no table', plan: createPlan(), expect: [] },
]);
