import { check } from '../../../../src/topics/line/checks/joint-flush';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { joinAt, joinBy, linePlan, ownDataSheet, tableOf } from '../../../support/linePlan';

const soiled = ['soiled-table', 'machine'];
const clean = ['clean-table', 'machine'];

/** The four measurements of a joint that is flush, with some of them as the case expects. */
function joint(subjects: string[], changed: Record<string, Partial<ExpectedFinding>> = {}): ExpectedFinding[] {
  const limits = { gap: 3, offset: 6, angle: 0.5, 'deck-step': 3 };
  return Object.entries(limits).map(([part, limit]) => ({ verdict: 'clear', part, subjects, measured: 0, limit, ...changed[part] }));
}

/** One bad measurement of the clean table; everything else holds. */
function oneBad(part: string, bad: Partial<ExpectedFinding>): ExpectedFinding[] {
  const all = [...joint(soiled), ...joint(clean, { [part]: { verdict: 'stop', repairs: ['snap-flush'], ...bad } })];
  return [...all.filter(({ verdict }) => verdict !== 'clear'), ...all.filter(({ verdict }) => verdict === 'clear')];
}

const raise = (by: number) =>
  linePlan({}, (plan) => {
    const { deck } = tableOf(plan, 'clean');
    if (deck.kind === 'fall') deck.jointHeight = 863.6 + by;
  });

describeCheck(check, [
  {
    name: 'both tables flush',
    plan: linePlan(),
    expect: [...joint(soiled, { gap: { says: 'The soiled table meets the machine flush; silicone seals ⅛″.' } }), ...joint(clean)],
  },
  {
    name: 'surveyed with a gap of 20 mm',
    plan: linePlan({}, (plan) => joinBy(plan, 'clean', { gap: 20 })),
    expect: oneBad('gap', {
      measured: 20,
      says: 'A gap of ¹³⁄₁₆″ is left between the clean table and the machine; silicone seals ⅛″. Close it up.',
    }),
  },
  {
    name: 'a gap just as wide as silicone seals',
    plan: linePlan({}, (plan) => joinBy(plan, 'clean', { gap: 3 })),
    expect: [...joint(soiled), ...joint(clean, { gap: { measured: 3 } })],
  },
  {
    name: 'drawn 12 mm into the machine',
    plan: linePlan({}, (plan) => joinBy(plan, 'clean', { gap: -12 })),
    expect: oneBad('gap', { measured: -12, limit: 0, says: 'The clean table runs ½″ into the machine. Move it out until they touch.' }),
  },
  {
    name: '15 mm out of line, to either side',
    plan: linePlan({}, (plan) => joinBy(plan, 'clean', { offset: -15 })),
    expect: oneBad('offset', {
      measured: 15,
      says: 'The clean table stands ⁹⁄₁₆″ out of line with the door; racks would catch. Move it sideways.',
    }),
  },
  {
    name: 'out of line by as much as is allowed',
    plan: linePlan({}, (plan) => joinBy(plan, 'clean', { offset: -6 })),
    expect: [
      ...joint(soiled),
      ...joint(clean, { offset: { measured: 6, says: 'The clean table is ¼″ out of line with the door; ¼″ is allowed.' } }),
    ],
  },
  {
    // Off square one corner of the joint opens and the other overlaps, so the gap is not told apart from the angle.
    name: '3° off square',
    plan: linePlan({}, (plan) => joinBy(plan, 'clean', { skewDeg: 3 })),
    expect: oneBad('angle', {
      measured: 3,
      says: 'The clean table stands 3° off square; the joint opens at one corner. Turn it square.',
    }).filter(({ part, subjects }) => part !== 'gap' || subjects !== clean),
  },
  {
    name: 'the deck 20 mm higher than the track',
    plan: raise(20),
    expect: oneBad('deck-step', {
      measured: 20,
      repairs: ['level-deck'],
      says: 'The clean table is ¹³⁄₁₆″ higher than the track; racks would catch. Lower it at its feet.',
    }),
  },
  { name: 'the deck 20 mm lower', plan: raise(-20), expect: oneBad('deck-step', { measured: 20, repairs: ['level-deck'] }) },
  {
    name: 'a surveyed deck goes down as a whole',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').deck = { kind: 'heights', heights: [873.6, 907] })),
    expect: oneBad('deck-step', { measured: 10, repairs: ['level-deck'] }),
  },
  {
    name: 'the height at the joint is not known',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').deck = { kind: 'fall', jointHeight: null, fall: 1 / 48 })),
    expect: oneBad('deck-step', {
      verdict: 'ask',
      measured: null,
      repairs: [],
      asks: 'tables.1.deck.jointHeight',
      says: 'The deck height of the clean table at the joint is not known. Measure it at the machine.',
    }),
  },
  {
    name: 'a survey without the height at the joint',
    plan: linePlan({}, (plan) => void (tableOf(plan, 'clean').deck = { kind: 'heights', heights: [null, 900] })),
    expect: oneBad('deck-step', { verdict: 'ask', measured: null, repairs: [], asks: 'tables.1.deck.heights.0' }),
  },
  {
    name: 'a table at a side without a door',
    plan: linePlan({ family: ownDataSheet({ doors: ['left', 'right'] }) }),
    expect: [
      {
        verdict: 'stop',
        part: 'door',
        subjects: clean,
        measured: false,
        limit: true,
        says: 'The clean table meets the machine at its front, which has no door. Move it to a side with a door.',
      },
      ...joint(soiled),
    ],
  },
  {
    name: 'a table at the back',
    plan: linePlan({}, (plan) => joinAt(plan, 'clean', 'back')),
    expect: [{ verdict: 'stop', part: 'door', subjects: clean, measured: false }, ...joint(soiled)],
  },
  {
    // The limits are the machine's own.
    name: 'a machine whose data sheet allows a wider gap',
    plan: linePlan({ family: ownDataSheet({ joint: { maxGap: 25, maxOffset: 6, maxAngleDeg: 0.5, maxDeckStep: 3 } }) }, (plan) =>
      joinBy(plan, 'clean', { gap: 20 }),
    ),
    expect: [
      ...joint(soiled, { gap: { limit: 25 } }),
      ...joint(clean, {
        gap: { measured: 20, limit: 25, says: 'The clean table meets the machine with a gap of ¹³⁄₁₆″; silicone seals 1″.' },
      }),
    ],
  },
]);
