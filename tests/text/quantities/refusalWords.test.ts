import { expect, test } from 'vitest';
import type { Plan } from '../../../src/plan';
import { createRefusal, deriveFigures, type Refusal } from '../../../src/rules';
import { deriveScene } from '../../../src/scene';
import { refusalSentence, refusalWords } from '../../../src/text';
import { FIGURES, FORMULAS } from '../../../src/topics/registry';
import { formatterFor } from '../../../src/units';
import { examplePlan } from '../../support/examplePlans';

const US = formatterFor('us');
const METRIC = formatterFor('metric');

/** Runs a formula of the registry on its first example with one input changed. */
function refusalOf(id: string, change: Record<string, unknown>): Refusal {
  const { record, run } = FORMULAS.find((formula) => formula.record.id === id) ?? {};
  const outcome = run?.({ ...record?.examples[0]?.inputs, ...change });
  if (outcome === undefined || outcome.ok) throw new Error(`${id} does not refuse`);
  return outcome.refusal;
}

test.each([
  [
    refusalOf('steady-humidity', { airflowM3s: 0.003 }),
    'airflowM3s is 0.003; steady humidity of a room holds for 0.005 to 100 m3/s',
    'airflow is 6 cfm; steady humidity of a room holds for 11 cfm to 211 888 cfm',
    'airflow is 3 L/s; steady humidity of a room holds for 5 L/s to 100 000 L/s',
  ],
  [
    refusalOf('drain-flow', { boreM: 0.254 }),
    'boreM is 0.254; capacity of a drain holds for 0.03175 to 0.2032 m',
    'bore is 10″; capacity of a drain holds for 1 ¼″ to 8″',
    'bore is 254 mm; capacity of a drain holds for 32 mm to 203 mm',
  ],
  [
    refusalOf('booster-power', { rinseC: 30 }),
    'rinseC is 30; size of the booster holds for 40 to 95 C',
    'rinse is 86 °F; size of the booster holds for 104 °F to 203 °F',
    'rinse is 30 °C; size of the booster holds for 40 °C to 95 °C',
  ],
  [
    refusalOf('bend-rounded', { radiusRatio: 0.3 }),
    'radiusRatio is 0.3; loss of a rounded bend holds for 0.5 to 20 ratio',
    'radius ratio is 0.3; loss of a rounded bend holds for 0.5 to 20',
    'radius ratio is 0.3; loss of a rounded bend holds for 0.5 to 20',
  ],
  [
    refusalOf('friction-factor', { method: 'guess' }),
    'method is guess; friction factor holds for colebrook, haaland, swamee-jain, altshul-tsal, churchill',
    'method is guess; friction factor holds for colebrook, haaland, swamee-jain, altshul-tsal, churchill',
    'method is guess; friction factor holds for colebrook, haaland, swamee-jain, altshul-tsal, churchill',
  ],
  [
    refusalOf('equivalent-diameter', { widthM: 3, heightM: 0.3048 }),
    'one side is at most 8 times the other: widthM is 3, heightM is 0.3048',
    'one side is at most 8 times the other: width is 3, height is 1′ 0″',
    'one side is at most 8 times the other: width is 3, height is 305 mm',
  ],
  [
    refusalOf('duct-insulation', { dewPointC: 43 }),
    'insulation of at most 0.1 m is enough: at 43.333333333333336 C with a dew point of 43 C it is not',
    'insulation of at most 3 ¹⁵⁄₁₆″ is enough: at 110 °F with a dew point of 109.4 °F it is not',
    'insulation of at most 100 mm is enough: at 43.3 °C with a dew point of 43 °C it is not',
  ],
  [
    createRefusal({ id: 'ampacity-table', title: '' }, 'ampacity-not-above-thinner', {
      size: '1/0',
      terminal: '60C',
      valueA: 120,
      thinnerA: 125,
    }),
    '1/0 AWG at 60C is 120 A; a thinner wire carries 125 A',
    '1/0 AWG at 60C is 120 A; a thinner wire carries 125 A',
    '1/0 AWG at 60C is 120 A; a thinner wire carries 125 A',
  ],
  // The formula alone tells that the flow is of air.
  [
    createRefusal(
      { id: 'air-mixing', title: 'air mixing' },
      'out-of-range',
      {},
      { input: 'flowM3s', value: 0.1, min: 1, max: 2, unit: 'm3/s' },
    ),
    'flowM3s is 0.1; air mixing holds for 1 to 2 m3/s',
    'flow is 212 cfm; air mixing holds for 2119 cfm to 4238 cfm',
    'flow is 100 L/s; air mixing holds for 1000 L/s to 2000 L/s',
  ],
  [
    createRefusal({ id: 'lifting-index', title: '' }, 'lifting-limit-zero', {}),
    'the limit is 0, nobody should lift so',
    'the limit is 0, nobody should lift so',
    'the limit is 0, nobody should lift so',
  ],
])('$code: %s', (refusal, si, us, metric) => {
  const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
  const passed = JSON.parse(JSON.stringify(refusal)) as Refusal;
  expect([refusalSentence(passed), plain(refusalWords(passed, US)), plain(refusalWords(passed, METRIC))]).toEqual([si, us, metric]);
});

/** Of what a plan says all is far too much, or far too little. */
const spoil = (plan: Plan, factor: number): Plan => {
  const far = structuredClone(plan);
  for (const hood of far.hoods) hood.lipHeight = (hood.lipHeight ?? 0) * factor;
  for (const { waste } of far.room.floorDrains) waste.bore = (waste.bore ?? 0) * factor;
  far.air.makeUp = 0.0001 * factor;
  far.supply.hotWaterC = 95;
  return far;
};

test.each([0.1, 8])('no figure gives a reason in the names of a formula: everything by %d', (factor) => {
  const refusals = deriveFigures(deriveScene(spoil(examplePlan('school-corner'), factor)), FIGURES).flatMap(({ refusal, group }) =>
    refusal === null ? [] : [refusalWords(refusal, US, group)],
  );
  expect(refusals.length).toBeGreaterThan(0);
  expect(refusals.filter((text) => /\b[a-z]{2,}[A-Z]|\bm3\/s|\d (m|C|Pa|ratio)\b/.test(text))).toEqual([]);
});
