import {
  compute,
  createMessages,
  type FigureReading,
  type FigureRule,
  type FormulaResult,
  type Message,
  type NoParams,
} from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { subjectsOf } from '../../air';
import { fittingLoss, fittingLossRecord } from '../formulas/fittingLoss';
import { frictionLoss, frictionLossRecord } from '../formulas/frictionLoss';
import { sectionLoss, sectionLossRecord } from '../formulas/sectionLoss';
import { needRunDuct, type RunDuct, sectionOf } from './support/runDuct';

export const rule: FigureRule = {
  id: 'run-loss',
  order: 550,
  title: 'Pressure that the run takes',
  group: 'air',
  unit: 'Pa',
  derive: (scene) => scene.runs.flatMap((run) => deriveRun(scene, run)),
};

/** What each part of the loss is. */
export interface RunLossMessages {
  'run-loss/whole': NoParams;
  'run-loss/bends': NoParams;
  'run-loss/entry': NoParams;
  'run-loss/exit': { cap: NonNullable<PlacedRun['run']['duct']['cap']> };
}

const say = createMessages<RunLossMessages>();

/** The whole, then its parts, at the airflow that the run must carry. */
function deriveRun(scene: Scene, run: PlacedRun): FigureReading[] {
  const duct = needRunDuct(scene, run);
  if ('reading' in duct)
    return [
      {
        ...duct.reading,
        part: 'whole',
      },
    ];
  const subjects = subjectsOf(run);
  const fitting = (part: 'bends' | 'entry' | 'exit', ...notes: Message[]): FigureReading => {
    const inputs = { coefficient: duct.known[part], velocityPressurePa: duct.known.straight.velocityPressurePa };
    return { part, subjects, ...compute(fittingLossRecord, fittingLoss, inputs), notes };
  };
  return [
    { part: 'whole', subjects, ...compute(sectionLossRecord, wholeLoss, sectionOf(duct.known)), notes: [say('run-loss/whole')] },
    { part: 'straight', subjects, ...straightLoss(duct.known) },
    fitting('bends', say('run-loss/bends'), ...duct.known.bendNotes),
    fitting('entry', say('run-loss/entry')),
    fitting('exit', say('run-loss/exit', { cap: run.run.duct.cap ?? 'none' })),
  ];
}

function wholeLoss(inputs: ReturnType<typeof sectionOf>): FormulaResult {
  const loss = sectionLoss(inputs);
  return loss.ok ? { ok: true, value: loss.value.totalPa } : loss;
}

function straightLoss({ straight, lengthM, diameterM, densityKgM3, airflowM3s }: RunDuct) {
  const velocityMs = airflowM3s / ((Math.PI / 4) * diameterM ** 2);
  return compute(frictionLossRecord, frictionLoss, {
    frictionFactor: straight.frictionFactor,
    lengthM,
    diameterM,
    densityKgM3,
    velocityMs,
  });
}
