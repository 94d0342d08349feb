import { expect, test } from 'vitest';
import { deriveFigures, FIGURES, refusalWords } from '../../src/figures';
import type { Plan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { formatterFor } from '../../src/units';
import { examplePlan } from '../support/examplePlans';

const US = formatterFor('us');
const METRIC = formatterFor('metric');

test.each([
  [
    'airflowM3s is 0.003; steady humidity of a room holds for 0.005 to 100 m3/s',
    'airflow is 6 cfm; steady humidity of a room holds for 11 cfm to 211 888 cfm',
    'airflow is 3 L/s; steady humidity of a room holds for 5 L/s to 100 000 L/s',
  ],
  [
    'boreM is 0.254; capacity of a drain holds for 0.03175 to 0.2032 m',
    'bore is 10″; capacity of a drain holds for 1 ¼″ to 8″',
    'bore is 254 mm; capacity of a drain holds for 32 mm to 203 mm',
  ],
  [
    'rinseC is 30; power of a booster holds for 40 to 100 C',
    'rinse is 86 °F; power of a booster holds for 104 °F to 212 °F',
    'rinse is 30 °C; power of a booster holds for 40 °C to 100 °C',
  ],
  [
    'radiusRatio is 0.3; loss of a bend holds for 0.5 to 3 ratio',
    'radius ratio is 0.3; loss of a bend holds for 0.5 to 3',
    'radius ratio is 0.3; loss of a bend holds for 0.5 to 3',
  ],
  ['the limit is 0, nobody should lift so', 'the limit is 0, nobody should lift so', 'the limit is 0, nobody should lift so'],
])('%s', (refusal, us, metric) => {
  const plain = (text: string) => text.replace(/[\u00a0\u202f]/g, ' ');
  expect([plain(refusalWords(refusal, US)), plain(refusalWords(refusal, METRIC))]).toEqual([us, metric]);
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
