import type { FormulaResult } from '../../src/rules';
import { equivalentDiameter, type FrictionMethod, type SectionLoss, sectionLoss } from '../../src/topics/duct';

type DuctShape = { kind: 'round'; diameterM: number } | { kind: 'rectangular'; widthM: number; heightM: number };

/** A stretch of one size. A fitting belongs to the section on whose velocity its coefficient is counted. */
export interface DuctSection {
  shape: DuctShape;
  lengthM: number;
  roughnessM: number;
  coefficients: readonly number[];
}

/** One air stream from where it enters to where it leaves. */
interface DuctRun {
  airflowM3s: number;
  densityKgM3: number;
  viscosityPas: number;
  method: FrictionMethod;
  sections: readonly DuctSection[];
}

export interface RunLoss {
  sections: readonly SectionLoss[];
  straightPa: number;
  fittingsPa: number;
  totalPa: number;
}

/** Loss of a whole run in Pa, section by section; a section that refuses speaks for the run. */
export function ductLoss(run: DuctRun): FormulaResult<RunLoss> {
  const sections: SectionLoss[] = [];
  for (const section of run.sections) {
    const loss = measureSection(run, section);
    if (!loss.ok) return loss;
    sections.push(loss.value);
  }
  const total = (key: 'straightPa' | 'fittingsPa' | 'totalPa') => sections.reduce((sum, one) => sum + one[key], 0);
  return { ok: true, value: { sections, straightPa: total('straightPa'), fittingsPa: total('fittingsPa'), totalPa: total('totalPa') } };
}

function measureSection(run: DuctRun, { shape, lengthM, roughnessM, coefficients }: DuctSection): FormulaResult<SectionLoss> {
  const { airflowM3s, densityKgM3, viscosityPas, method } = run;
  const size = measureShape(shape);
  if (!size.ok) return size;
  const coefficient = coefficients.reduce((sum, one) => sum + one, 0);
  return sectionLoss({ airflowM3s, densityKgM3, viscosityPas, method, ...size.value, lengthM, roughnessM, coefficient });
}

function measureShape(shape: DuctShape): FormulaResult<{ diameterM: number; areaM2: number }> {
  if (shape.kind === 'round') return { ok: true, value: { diameterM: shape.diameterM, areaM2: (Math.PI / 4) * shape.diameterM ** 2 } };
  const { widthM, heightM } = shape;
  const diameter = equivalentDiameter({ widthM, heightM });
  return diameter.ok ? { ok: true, value: { diameterM: diameter.value, areaM2: widthM * heightM } } : diameter;
}
