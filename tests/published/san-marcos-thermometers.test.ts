import { expect, test } from 'vitest';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { check } from '../../src/topics/heat/checks/thermometers';
import { hookedSheetPlan } from '../support/hookUpPlans';

// source: San Marcos TX, food ordinance, page 18 (Food Code 4-204.115, the number from memory) · read · exact
test.each([
  [true, 'clear'],
  [false, 'stop'],
] as const)('a thermometer in each tank and at the rinse manifold, %s: %s', (thermometers, expected) => {
  const findings = runChecks(deriveScene(hookedSheetPlan({ thermometers })), [check]);
  expect(findings.map(({ verdict }) => verdict)).toEqual([expected]);
});
