import { expect, test, vi } from 'vitest';

import {
  type Check,
  deriveWorstVerdict,
  findRepairs,
  type Measurement,
  type Relation,
  type Repair,
  runChecks,
  type Verdict,
} from '../../src/rules';

import { deriveScene } from '../../src/scene';
import { examplePlan } from '../support/examplePlans';

const repair: Repair = { id: 'mend', label: { key: 'invented/mend', params: {} }, edit: () => {} };
const scene = deriveScene(examplePlan('school-corner'));

/** A check whose one measurement misses its limit by 5. */
const checkWith = (find: () => Repair[]): Check => ({
  id: 'invented',
  order: 0,
  title: 'Invented',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'geometry', text: 'Invented for this test.' },
  why: 'For this test.',
  measure: () => [
    {
      subjects: ['thing'],
      place: { kind: 'point', point: { x: 0, y: 0 } },
      value: 5,
      limit: 10,
      message: { key: 'invented/short', params: { missing: 5 } },
      repairs: { ids: ['mend'], find },
    },
  ],
});

test('a finding names its repairs, and is plain data', () => {
  const [finding] = runChecks(scene, [checkWith(() => [repair])]);
  expect(finding).toMatchObject({ id: 'invented:thing', verdict: 'stop', margin: -5, repairs: ['mend'] });
  expect(structuredClone(finding)).toStrictEqual(finding);
  expect(JSON.parse(JSON.stringify(finding))).toStrictEqual(finding);
});

test('repairs are found when they are asked for', () => {
  const find = vi.fn<() => Repair[]>(() => [repair]);
  const check = checkWith(find);
  runChecks(scene, [check]);
  expect(find).not.toHaveBeenCalled();
  expect(findRepairs(scene, [check], 'invented:thing')).toEqual([repair]);
  expect(find).toHaveBeenCalledTimes(1);
});

test.each(['invented', 'invented:other', 'other:thing', 'invented:thing:more'])('there are none for %s, which is no finding', (id) => {
  expect(findRepairs(scene, [checkWith(() => [repair])], id)).toEqual([]);
});

const measuring = (relation: Relation, ...measured: Partial<Measurement>[]): Check => ({
  ...checkWith(() => [repair]),
  relation,
  measure: () =>
    measured.map((one) => ({
      subjects: ['thing'],
      place: { kind: 'point', point: { x: 0, y: 0 } },
      value: 5,
      limit: 10,
      message: { key: 'invented/short', params: {} },
      ...one,
    })),
});

interface Row {
  relation: Relation;
  measured: Partial<Measurement>;
  verdict: Verdict;
  margin: number | null;
}

test.each<Row>([
  { relation: 'at-least', measured: { value: 10 }, verdict: 'clear', margin: 0 },
  { relation: 'at-least', measured: { value: 9 }, verdict: 'stop', margin: -1 },
  { relation: 'at-least', measured: { value: 9, severity: 'watch' }, verdict: 'watch', margin: -1 },
  { relation: 'at-least', measured: { value: 12, watchLimit: 13 }, verdict: 'watch', margin: 2 },
  { relation: 'at-least', measured: { value: 13, watchLimit: 13 }, verdict: 'clear', margin: 3 },
  { relation: 'at-least', measured: { value: null }, verdict: 'ask', margin: null },
  { relation: 'at-least', measured: { limit: null }, verdict: 'ask', margin: null },
  { relation: 'at-least', measured: { value: 'wide' }, verdict: 'stop', margin: null },
  { relation: 'at-most', measured: { value: 10 }, verdict: 'clear', margin: 0 },
  { relation: 'at-most', measured: { value: 11 }, verdict: 'stop', margin: -1 },
  { relation: 'at-most', measured: { value: 9, watchLimit: 8 }, verdict: 'watch', margin: 1 },
  { relation: 'more-than', measured: { value: 10 }, verdict: 'stop', margin: 0 },
  { relation: 'more-than', measured: { value: 11 }, verdict: 'clear', margin: 1 },
  { relation: 'more-than', measured: { value: 11, watchLimit: 12 }, verdict: 'watch', margin: 1 },
  { relation: 'more-than', measured: { value: 12, watchLimit: 12 }, verdict: 'clear', margin: 2 },
  // A millionth is no difference.
  { relation: 'at-least', measured: { value: -1e-6, limit: 0 }, verdict: 'clear', margin: -1e-6 },
  { relation: 'more-than', measured: { value: 1e-6, limit: 0 }, verdict: 'stop', margin: 1e-6 },
  { relation: 'equals', measured: { value: 1e-6, limit: 0 }, verdict: 'clear', margin: -1e-6 },
  { relation: 'equals', measured: { value: 10 }, verdict: 'clear', margin: -0 },
  { relation: 'equals', measured: { value: 12 }, verdict: 'stop', margin: -2 },
  { relation: 'equals', measured: { value: 8 }, verdict: 'stop', margin: -2 },
  { relation: 'equals', measured: { value: 'left', limit: 'left' }, verdict: 'clear', margin: null },
  { relation: 'equals', measured: { value: 'left', limit: 'right' }, verdict: 'stop', margin: null },
  { relation: 'equals', measured: { value: 10, limit: '10' }, verdict: 'stop', margin: null },
  // The measurement's own relation goes before that of the check.
  { relation: 'at-least', measured: { value: 9, relation: 'at-most' }, verdict: 'clear', margin: 1 },
])('$relation, $measured: $verdict', ({ relation, measured, verdict, margin }) => {
  expect(runChecks(scene, [measuring(relation, measured)])).toMatchObject([{ verdict, margin }]);
});

test('findings come worst first, and the first of them is the worst', () => {
  const found = runChecks(scene, [measuring('at-least', { value: 20 }, { value: null }, { value: 5 }, { value: 5, severity: 'watch' })]);
  expect(found.map(({ verdict }) => verdict)).toEqual(['stop', 'watch', 'ask', 'clear']);
  expect(found.map((_, i) => deriveWorstVerdict(found.slice(i)))).toEqual(['stop', 'watch', 'ask', 'clear']);
  expect(deriveWorstVerdict([])).toBe('ask');
});

test.each([
  { id: 'invented:thing', repairs: ['mend'] },
  { id: 'invented:door:thing', repairs: ['open'] },
  { id: 'invented:thing:other', repairs: [] },
  { id: 'inven:thing', repairs: [] },
  { id: 'other', repairs: [] },
])('the repairs of the finding $id', ({ id, repairs }) => {
  const open: Repair = { ...repair, id: 'open' };
  const checks = [
    measuring(
      'at-least',
      { repairs: { ids: ['mend'], find: () => [repair] } },
      { part: 'door', repairs: { ids: ['open'], find: () => [open] } },
    ),
  ];
  expect(findRepairs(scene, checks, id).map((one) => one.id)).toEqual(repairs);
});
