import { check } from '../../../../src/topics/duct/checks/duct-material';
import { describeCheck, type ExpectedFinding } from '../../../support/cases';
import { linePlan } from '../../../support/linePlan';
import { runPlan } from '../../../support/runPlans';

const UP = [[0, 0, 3000]] as const;
const found = (part: string, verdict: ExpectedFinding['verdict'], measured: boolean | null): ExpectedFinding => ({
  verdict,
  part,
  subjects: ['run', 'machine'],
  measured,
  limit: true,
});
const METAL = found('metal', 'clear', true);
const TIGHT = found('joints', 'clear', true);
const plain = (says: string): ExpectedFinding => ({ ...found('stainless', 'watch', false), repairs: ['take-stainless'], says });

// IMC 506.4: rigid metallic, joined and sealed (secondary); stainless by UFC 4-722-01 and the VA manual, superseded, so a watch.
describeCheck(check, [
  {
    name: 'stainless, tight',
    plan: runPlan(UP, { material: 'stainless' }),
    expect: [METAL, found('stainless', 'clear', true), TIGHT],
  },
  {
    name: 'aluminum is rigid metal, and no more',
    plan: runPlan(UP, { material: 'aluminum' }),
    expect: [
      plain(
        'The run is aluminum; criteria of the government want all of a dish machine’s duct of stainless steel. Take it, or let the local code decide.',
      ),
      METAL,
      TIGHT,
    ],
  },
  {
    name: 'galvanized',
    plan: runPlan(UP, { material: 'galvanized' }),
    expect: [{ ...found('stainless', 'watch', false), repairs: ['take-stainless'] }, METAL, TIGHT],
  },
  {
    name: 'galvanized spiral',
    plan: runPlan(UP, { material: 'galvanized-spiral' }),
    expect: [{ ...found('stainless', 'watch', false), repairs: ['take-stainless'] }, METAL, TIGHT],
  },
  {
    name: 'flexible',
    plan: runPlan(UP, { material: 'flexible' }),
    expect: [
      {
        ...found('metal', 'stop', false),
        repairs: ['take-stainless'],
        says: 'The run is flexible duct; the duct of a dish machine is to be rigid metal. Take stainless steel.',
      },
      TIGHT,
    ],
  },
  {
    name: 'PVC',
    plan: runPlan(UP, { material: 'pvc' }),
    expect: [{ ...found('metal', 'stop', false), repairs: ['take-stainless'] }, TIGHT],
  },
  {
    name: 'material not known',
    plan: runPlan(UP, { material: null }),
    expect: [{ ...found('metal', 'ask', null), asks: 'runs.0.duct.material' }, TIGHT],
  },
  {
    name: 'joints that leak',
    plan: runPlan(UP, { material: 'stainless', sealed: false }),
    expect: [
      {
        ...found('joints', 'stop', false),
        repairs: ['seal-joints'],
        says: 'The joints of the run are not tight: what condenses in it drips out of them. Have them sealed.',
      },
      METAL,
      found('stainless', 'clear', true),
    ],
  },
  {
    name: 'joints of which nothing is known',
    plan: runPlan(UP, { material: 'stainless', sealed: null }),
    expect: [{ ...found('joints', 'ask', null), asks: 'runs.0.duct.sealed' }, METAL, found('stainless', 'clear', true)],
  },
  { name: 'no run', plan: linePlan(), expect: [] },
]);
