import { createPlan } from '../../../../src/plan';
import { check } from '../../../../src/topics/cleanliness/checks/ceiling';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const height = (ceilingHeight: number | null) => linePlan({}, ({ room }) => void (room.ceilingHeight = ceilingHeight));
const of = (verdict: ExpectedFinding['verdict'], measured: number | null): ExpectedFinding => ({
  part: 'height',
  verdict,
  subjects: [],
  measured,
  limit: 2286,
});
const finish = (verdict: ExpectedFinding['verdict'], measured: boolean | null): ExpectedFinding => ({
  part: 'finish',
  verdict,
  subjects: [],
  measured,
  limit: true,
});
const smooth = finish('clear', true);

/** 7 ft 6 in: 29 CFR 1910.36(g)(1) (secondary); 9 ft, smooth and washable: UFC 4-750-01NF (read). */
describeCheck(check, [
  { name: '9 ft', plan: height(2743.2), expect: [{ ...of('clear', 2743.2), says: 'The ceiling is 9′ 0″ high; 7′ 6″ is needed.' }, smooth] },
  {
    name: '8 ft 6 in',
    plan: height(2590.8),
    expect: [
      {
        ...of('watch', 2590.8),
        says: 'The ceiling is 8′ 6″ high; a guide for military kitchens has 9′ 0″. See that steam is drawn off.',
      },
      smooth,
    ],
  },
  { name: '7 ft 6 in', plan: height(2286), expect: [of('watch', 2286), smooth] },
  {
    name: '7 ft 5 in',
    plan: height(2260.6),
    expect: [{ ...of('stop', 2260.6), says: 'The ceiling is 7′ 5″ high; 7′ 6″ is needed over an exit route.' }, smooth],
  },
  { name: 'height not known', plan: height(null), expect: [{ ...of('ask', null), asks: 'room.ceilingHeight' }, smooth] },
  {
    name: 'rough',
    plan: linePlan({}, ({ finish: made }) => void (made.ceilingWashable = false)),
    expect: [finish('watch', false), of('clear', 3000)],
  },
  {
    name: 'finish not known',
    plan: linePlan({}, ({ finish: made }) => void (made.ceilingWashable = null)),
    expect: [{ ...finish('ask', null), asks: 'finish.ceilingWashable' }, of('clear', 3000)],
  },
  { name: 'an empty room', plan: createPlan(), expect: [] },
]);
