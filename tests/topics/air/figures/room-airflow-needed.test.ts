import { expect, it } from 'vitest';
import { readFigure } from '../../../../src/rules';
import { deriveScene } from '../../../../src/scene';
import { rule } from '../../../../src/topics/air/figures/room-airflow-needed';
import { rule as roomHumiditySteadyFigure } from '../../../../src/topics/air/figures/room-humidity-steady';
import { describeFigure } from '../../../support/figureCases';
import { linePlan } from '../../../support/linePlan';
import { airflowBy, moistRoom } from '../../../support/roomAirPlans';

describeFigure(rule, [
  {
    // The moisture balance turned about, against 65 %; the air by PsychroLib.
    name: 'what keeps 1230 W of latent heat at 65 %',
    plan: moistRoom({ roomExhaust: 0.1, makeUp: 0.09 }),
    expect: [{ subjects: [], value: airflowBy(0.65, 0.1, 0.09), within: 1e-5 }],
  },
  {
    name: 'make-up air moister than the room may be',
    plan: moistRoom({ roomExhaust: 0.1, makeUp: 0.1, makeUpC: 30, makeUpHumidity: 0.9 }),
    expect: [{ subjects: [], value: null, refuses: 'drier than the room' }],
  },
  {
    name: 'the make-up air is not known',
    plan: moistRoom({ roomExhaust: 0.1, makeUp: null }),
    expect: [{ subjects: [], value: null, asks: 'air.makeUp' }],
  },
  { name: 'no machine', plan: linePlan({}, (plan) => void (plan.machines = [])), expect: [] },
]);

it('with just that airflow the room stays at 65 %', () => {
  const needed = airflowBy(0.65, 0.1, 0.09);
  const scene = deriveScene(moistRoom({ roomExhaust: needed, makeUp: 0.9 * needed }));
  expect(readFigure(roomHumiditySteadyFigure, scene)[0]?.value).toBeCloseTo(0.65, 4);
});
