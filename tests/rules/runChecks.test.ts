import { expect, test, vi } from 'vitest';
import { type Check, findRepairs, type Repair, runChecks } from '../../src/rules';
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
