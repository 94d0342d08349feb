import { check } from '../../../../src/topics/cleanliness/checks/clean-off-floor';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';

const shelf = (clearBelow: number | null, ware: 'clean' | 'soiled' = 'clean') =>
  linePlan({}, ({ things }) => {
    if (things[0] !== undefined) Object.assign(things[0], { clearBelow, ware });
  });
const metric = (clearBelow: number) =>
  linePlan({}, ({ things, settings }) => {
    settings.units = 'metric';
    if (things[0] !== undefined) things[0].clearBelow = clearBelow;
  });
const of = (verdict: ExpectedFinding['verdict'], measured: number | null): ExpectedFinding => ({
  verdict,
  subjects: ['clean-shelving'],
  measured,
  limit: 152.4,
});

/** 6 in: Sonoma County guidelines (read); Food Code 4-903.11(A)(3) (memory). */
describeCheck(check, [
  {
    name: '6 in',
    plan: shelf(152.4),
    expect: [{ ...of('clear', 152.4), says: 'On the shelving clean ware stands 6″ above the floor; 6″ is needed.' }],
  },
  {
    name: '5 in',
    plan: shelf(127),
    expect: [{ ...of('stop', 127), says: 'On the shelving clean ware stands 5″ above the floor, 1″ too low. Raise the lowest shelf.' }],
  },
  { name: '15 cm in a plan of millimetres, as the code prints it', plan: metric(150), expect: [{ ...of('clear', 150), limit: 150 }] },
  { name: '149 mm', plan: metric(149), expect: [{ ...of('stop', 149), limit: 150 }] },
  { name: '15 cm in a plan of inches', plan: shelf(150), expect: [of('stop', 150)] },
  { name: 'not known', plan: shelf(null), expect: [{ ...of('ask', null), asks: 'things.0.clearBelow' }] },
  { name: 'shelving for soiled ware', plan: shelf(0, 'soiled'), expect: [] },
]);
