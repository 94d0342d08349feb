import { askFor, createRefusal, type FigureReading, type FormulaResult, refuse } from '../../../../rules';
import { dataSheetPath, type PlacedMachine, type PlacedRun, type Scene } from '../../../../scene';
import { machineOf, STANDARD_DENSITY, subjectsOf } from '../../../air';
import { type OperatingPoint, operatingPointRecord, solveOperatingPoint } from '../../formulas/operatingPoint';
import { sectionLoss } from '../../formulas/sectionLoss';
import { type FanPoint, scaleFanCurve } from '../../formulas/support/fanCurve';
import { systemCoefficient } from '../../formulas/systemCurve';
import { sayDuctAsk } from './ductAsks';
import { needRunDuct, type RunDuct, sectionOf } from './runDuct';

/** The fan of a run against the run: its curve in the air of the run, the system's coefficient, and where the two meet. */
export interface RunFan {
  duct: RunDuct;
  curve: FanPoint[];
  systemK: number;
  /** Refuses where the curves do not meet. */
  point: FormulaResult<OperatingPoint>;
}

/** null: a machine without a vent of its own has no fan on its data sheet. */
export function needRunFan(scene: Scene, placed: PlacedRun): { known: RunFan } | { reading: FigureReading } | null {
  const machine = machineOf(scene, placed);
  if (machine === undefined || machine.sheet.vent.kind !== 'direct') return null;
  const { fanCurve } = machine.sheet.vent;
  if (fanCurve.length < 2) return { reading: askCurve(scene, placed, machine) };
  const duct = needRunDuct(scene, placed);
  if ('reading' in duct) return duct;
  const sheetCurve = fanCurve.map(({ airflow, pressure }) => ({ airflowM3s: airflow, pressurePa: pressure }));
  const curve = scaleFanCurve(sheetCurve, { speedRatio: 1, densityRatio: duct.known.densityKgM3 / STANDARD_DENSITY });
  const met = meet(duct.known, curve);
  return met.ok ? { known: { duct: duct.known, curve, ...met.value } } : { reading: refuse(subjectsOf(placed), met.refusal) };
}

/** The sheet of the plan's own, where the curve can be written down; for a family of the catalogue the machine's choice of sheet. */
const askCurve = (scene: Scene, placed: PlacedRun, machine: PlacedMachine) =>
  askFor(subjectsOf(placed), sayDuctAsk('duct/ask-fan-curve'), dataSheetPath(scene, machine, 'vent', 'fanCurve'));

/** Friction falls a little as the air goes faster, so the system's coefficient is taken again where the curves meet. */
function meet(duct: RunDuct, curve: readonly FanPoint[]): FormulaResult<Pick<RunFan, 'systemK' | 'point'>> {
  let airflowM3s = duct.airflowM3s;
  let met: Pick<RunFan, 'systemK' | 'point'> | null = null;
  for (let round = 0; round < ROUNDS; round++) {
    const loss = sectionLoss(sectionOf(duct, airflowM3s));
    if (!loss.ok) return met === null ? loss : { ok: true, value: met };
    const systemK = systemCoefficient({ pressurePa: loss.value.totalPa, airflowM3s });
    if (!systemK.ok) return systemK;
    met = { systemK: systemK.value, point: solveOperatingPoint(curve, systemK.value) };
    if (!met.point.ok) break;
    airflowM3s = met.point.value.airflowM3s;
  }
  return met === null ? { ok: false, refusal: createRefusal(operatingPointRecord, 'run-loss-not-known', {}) } : { ok: true, value: met };
}

/** The coefficient moves by parts in a thousand: after three rounds nothing that is shown changes any more. */
const ROUNDS = 3;
