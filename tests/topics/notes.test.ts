import { expect, test } from 'vitest';
import { deriveFigures } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { FIGURES } from '../../src/topics/registry';
import { examplePlans } from '../support/examplePlans';

/** Some are told late: what is shown is what they say, never how it is made. */
test.each(examplePlans())('$name: every note is made of whole sentences', ({ plan }) => {
  const notes = deriveFigures(deriveScene(plan), FIGURES).flatMap(({ id, note }) => (note === null ? [] : [{ id, note }]));
  expect(notes.length).toBeGreaterThan(20);
  expect(notes.filter(({ note }) => !/^[A-Z0-9].*\.$/.test(note) || /=>|undefined|null|NaN/.test(note))).toEqual([]);
});
