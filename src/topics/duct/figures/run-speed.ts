import { compute, type FigureReading, type FigureRule, refuse, withSources } from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { needAirflow, subjectsOf } from '../../air';
import { DUCT_VELOCITY } from '../formulas/ductLimits';
import { ductVelocity, ductVelocityRecord } from '../formulas/ductVelocity';
import { measureSize } from './support/runDuct';

export const rule: FigureRule = {
  id: 'run-speed',
  order: 530,
  title: 'Velocity in the run',
  group: 'air',
  unit: 'm/s',
  derive: (scene) => scene.runs.map((run) => deriveRun(scene, run)),
};

function deriveRun(scene: Scene, run: PlacedRun): FigureReading {
  const airflow = needAirflow(scene, run);
  if ('reading' in airflow) return airflow.reading;
  const size = measureSize(run);
  if (!size.ok) return refuse(subjectsOf(run), size.refusal);
  const inputs = { airflowM3s: airflow.known, areaM2: size.value.areaM2 };
  const answer = compute(ductVelocityRecord, ductVelocity, inputs);
  // The range that it is held against stands beside the number.
  const how = withSources(answer.how, ...DUCT_VELOCITY.source);
  return { subjects: subjectsOf(run), ...answer, how };
}
