import { createPlan } from '../../../../src/plan';
import { check } from '../../../../src/topics/water/checks/water-hardness';
import { toSI } from '../../../../src/units';
import { describeCheck } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const gpg = (value: number) => toSI(value, 'gpg');
const hard = (hardness: number | null) => linePlan({}, ({ pipes }) => void (pipes.hardness = hardness));
const found = (verdict: 'clear' | 'watch', value: number, limit: number) => ({
  verdict,
  subjects: [],
  measured: gpg(value),
  limit: gpg(limit),
});

/** UFC 4-750-01NF, 6-2.3.2: softener above 6 gpg, below 2 gpg can hurt some equipment. */
describeCheck(check, [
  { name: '5 gpg', plan: hard(gpg(5)), expect: [found('clear', 5, 6)] },
  { name: '6 gpg', plan: hard(gpg(6)), expect: [found('clear', 6, 6)] },
  {
    name: '7 gpg',
    plan: hard(gpg(7)),
    expect: [
      {
        ...found('watch', 7, 6),
        says: 'The water has 7 gpg of hardness and design guides take 6 gpg at most: put a softener before the machine, or delime it often.',
      },
    ],
  },
  { name: '2 gpg', plan: hard(gpg(2)), expect: [found('clear', 2, 2)] },
  {
    name: '1 gpg',
    plan: hard(gpg(1)),
    expect: [
      {
        ...found('watch', 1, 2),
        says: 'The water has 1 gpg of hardness, under 2 gpg: so soft it can hurt some equipment; ask the machine’s maker.',
      },
    ],
  },
  { name: 'not tested', plan: hard(null), expect: [{ verdict: 'ask', subjects: [], measured: null, asks: 'pipes.hardness' }] },
  { name: 'no machine', plan: createPlan(), expect: [] },
]);
