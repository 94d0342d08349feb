import { compute, createMessages, type FigureReading, type FigureRule, type Message, type NoParams, withSources } from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { subjectsOf } from '../../air';
import { DUCT_FRICTION } from '../formulas/ductLimits';
import { FRICTION_METHODS, type FrictionMethod, frictionFactor } from '../formulas/frictionFactor';
import { frictionLoss, frictionLossRecord } from '../formulas/frictionLoss';
import { reynolds } from '../formulas/reynolds';
import { needRunDuct, type RunDuct } from './support/runDuct';

export const rule: FigureRule = {
  id: 'run-friction',
  order: 540,
  title: 'Friction of the run',
  group: 'air',
  unit: 'Pa/m',
  derive: (scene) => scene.runs.map((run) => deriveRun(scene, run)),
};

/** Friction of one metre; the explicit forms of the friction factor stand beside the one that is taken. */
function deriveRun(scene: Scene, run: PlacedRun): FigureReading {
  const duct = needRunDuct(scene, run);
  if ('reading' in duct) return duct.reading;
  const { diameterM, densityKgM3, straight, airflowM3s } = duct.known;
  const velocityMs = airflowM3s / ((Math.PI / 4) * diameterM ** 2);
  const inputs = { frictionFactor: straight.frictionFactor, lengthM: 1, diameterM, densityKgM3, velocityMs };
  const answer = compute(frictionLossRecord, frictionLoss, inputs);
  const how = withSources(answer.how, ...DUCT_FRICTION.source);
  return { subjects: subjectsOf(run), ...answer, how, notes: [compareForms(duct.known), say('run-friction/handbook')] };
}

/** The friction factor by each form that answers, and what a handbook designs for. */
export interface RunFrictionMessages {
  /** The first is taken. */
  'run-friction/factors': { factors: readonly { method: FrictionMethod; factor: number }[] };
  /**
   * No check holds this row against a run: so narrow a duct reaches the velocity of the same row, which is held, only with more
   * friction. Both fit from about 19 in and 2,900 cfm on.
   */
  'run-friction/handbook': NoParams;
}

const say = createMessages<RunFrictionMessages>();

function compareForms(duct: RunDuct): Message {
  const factors = FRICTION_METHODS.flatMap((method) => {
    const factor = factorBy(duct, method);
    return factor === null ? [] : [{ method, factor }];
  });
  return say('run-friction/factors', { factors });
}

function factorBy({ airflowM3s, diameterM, densityKgM3, viscosityPas, roughnessM }: RunDuct, method: FrictionMethod): number | null {
  const velocityMs = airflowM3s / ((Math.PI / 4) * diameterM ** 2);
  const number = reynolds({ velocityMs, diameterM, densityKgM3, viscosityPas });
  const factor = number.ok ? frictionFactor({ reynolds: number.value, relativeRoughness: roughnessM / diameterM, method }) : number;
  return factor.ok ? factor.value : null;
}
