import { expect, test } from 'vitest';
import { deriveFigures } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { tellIn } from '../../src/text';
import { FIGURES } from '../../src/topics/registry';
import { formatterFor } from '../../src/units';
import { examplePlans } from '../support/examplePlans';

test.each(examplePlans())('$name: every note is made of whole sentences', ({ plan }) => {
  const notes = deriveFigures(deriveScene(plan), FIGURES).flatMap(({ id, notes: said }) =>
    said.map((message) => ({ id, note: tellIn(formatterFor('us'))(message) })),
  );
  expect(notes.length).toBeGreaterThan(20);
  expect(notes.filter(({ note }) => !/^[A-Z0-9].*\.$/.test(note) || /=>|undefined|null|NaN/.test(note))).toEqual([]);
});
