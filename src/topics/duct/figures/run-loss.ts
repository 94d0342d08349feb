import { compute, type FigureReading, type FigureRule, type FormulaResult } from '../../../rules';
import type { PlacedRun, Scene } from '../../../scene';
import { subjectsOf } from '../../air';
import { fittingLoss, fittingLossRecord } from '../formulas/fittingLoss';
import { frictionLoss, frictionLossRecord } from '../formulas/frictionLoss';
import { sectionLoss, sectionLossRecord } from '../formulas/sectionLoss';
import { ENTRY_NOTE, needRunDuct, type RunDuct, sectionOf } from './support/runDuct';

export const rule: FigureRule = {
  id: 'run-loss',
  order: 550,
  title: 'Pressure that the run takes',
  group: 'air',
  unit: 'Pa',
  derive: (scene) => scene.runs.flatMap((run) => deriveRun(scene, run)),
};

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
  const fitting = (part: 'bends' | 'entry' | 'exit', note: string): FigureReading => {
    const inputs = { coefficient: duct.known[part], velocityPressurePa: duct.known.straight.velocityPressurePa };
    return { part, subjects, ...compute(fittingLossRecord, fittingLoss, inputs), note };
  };
  return [
    { part: 'whole', subjects, ...compute(sectionLossRecord, wholeLoss, sectionOf(duct.known)), note: WHOLE_NOTE },
    { part: 'straight', subjects, ...straightLoss(duct.known) },
    fitting('bends', [BENDS_NOTE, ...duct.known.bendNotes].join(' ')),
    fitting('entry', ENTRY_NOTE),
    fitting('exit', EXIT_NOTES[run.run.duct.cap ?? 'none']),
  ];
}

const EXIT_NOTES = {
  none: 'The open end without a cap.',
  'well-spaced': 'The open end and a weather cap that is well spaced.',
  'low-cone': 'The open end and a low cone over it.',
};

const WHOLE_NOTE = 'At the airflow that the run must carry, in the air that is in it.';
const BENDS_NOTE = 'Each bend by its angle, radius and make; the friction along it is in the length.';

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
