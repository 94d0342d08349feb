import { expect, test } from 'vitest';
import { aisleWords, passWords } from '../../../../../src/text/en/words';
import { aisleSource, describeAisle, describePass, passSource } from '../../../../../src/topics/room/checks/support/aisles';
import { formatterFor } from '../../../../../src/units';

const f = formatterFor('us');
const say = (text: string) => text.replaceAll(/[\u00a0\u202f]/g, ' ');
const of = (personWidth: number, aisleWidth: number) => ({ personWidth, aisleWidth });

/** 36 in: plan review guide (read); 42, 48 and 30 to 72 in by case (secondary): a setting of the plan. */
test.each([
  [914.4, 'published', '3′ 0″ is wanted in an aisle'],
  [1066.8, 'common-practice', '3′ 6″ is wanted in an aisle by the setting of this plan'],
  [762, 'common-practice', '2′ 6″ is wanted in an aisle by the setting of this plan'],
] as const)('an aisle of %d', (width, kind, words) => {
  expect([aisleSource(of(711.2, width)).kind, say(aisleWords(describeAisle(of(711.2, width)), f))]).toEqual([kind, words]);
});

/** 28 in count whatever the setting: 29 CFR 1910.36(g)(2) (read). */
test.each([
  [508, undefined, '2′ 4″ is needed to get out, whatever the plan’s setting of 1′ 8″'],
  [711.2, undefined, '2′ 4″ is needed'],
  [863.6, 'common-practice', '2′ 10″ is needed'],
] as const)('a person of %d', (width, kind, words) => {
  expect([passSource(of(width, 914.4)).source?.kind, say(passWords(describePass(of(width, 914.4)), f))]).toEqual([kind, words]);
});
