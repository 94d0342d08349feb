import { expect, test, vi } from 'vitest';
import { type Check, type Repair, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { examplePlan } from '../support/examplePlans';

const repair: Repair = { id: 'mend', label: () => 'Mend it', edit: () => {} };

/** A check whose one measurement misses its limit by 5. */
const checkWith = (repairs: () => Repair[]): Check => ({
  id: 'invented',
  order: 0,
  title: 'Invented',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'geometry', text: 'Invented for this test.' },
  why: 'For this test.',
  measure: () => [
    { subjects: ['thing'], place: { kind: 'point', point: { x: 0, y: 0 } }, value: 5, limit: 10, say: () => 'Five are missing.', repairs },
  ],
});

test('repairs are worked out when they are first read, and once', () => {
  const workOut = vi.fn<() => Repair[]>(() => [repair]);
  const [finding] = runChecks(deriveScene(examplePlan('school-corner')), [checkWith(workOut)]);
  expect(finding).toMatchObject({ verdict: 'stop', margin: -5 });
  // The line above reads no repair: a property of the finding that nobody names is not asked for.
  expect(workOut).not.toHaveBeenCalled();
  expect(finding?.repairs).toEqual([repair]);
  expect(finding?.repairs).toEqual([repair]);
  expect(workOut).toHaveBeenCalledTimes(1);
});
