import { rule } from '../../../../src/topics/water/figures/scale-per-year';
import { toSI } from '../../../../src/units';
import { describeFigure } from '../../../support/figureCases';
import { yearPlan } from '../../../support/yearPlans';

const subjects = ['machine'];

/** 1 grain a US gallon is 64.79891 mg in it (NIST SP 811 B.9): 6 grains in each of 25,916.8 gal. */
describeFigure(rule, [
  {
    name: '6 gpg in 0.89 gal for each of 29,120 racks',
    plan: yearPlan(0.89, {}, ({ pipes }) => void (pipes.hardness = toSI(6, 'gpg'))),
    expect: [{ subjects, value: 25_916.8 * 6 * 64.79891e-6, within: 1e-4, notes: 'never with chlorine' }],
  },
  {
    name: 'hardness is not known',
    plan: yearPlan(0.89, {}, ({ pipes }) => void (pipes.hardness = null)),
    expect: [{ subjects, value: null, asks: 'pipes.hardness' }],
  },
  {
    name: 'the meals are not known',
    plan: yearPlan(0.89, {}, ({ demand }) => void (demand.mealsPerDay = null)),
    expect: [{ subjects, value: null, asks: 'demand.mealsPerDay' }],
  },
]);
