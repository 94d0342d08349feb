import { compute, type FormulaResult } from '../../../../rules';
import { relativeHumidity, relativeHumidityRecord, type StateInputs } from '../../formulas/humidityRatio';

/** Relative humidity of vapour in air; air that would be fog counts as saturated, so that the worst case has a number too. */
export const relativeOf = (inputs: StateInputs) => compute(relativeHumidityRecord, relativeOrSaturated, inputs);

function relativeOrSaturated(inputs: StateInputs): FormulaResult {
  const relative = relativeHumidity(inputs);
  const isFog = !relative.ok && relative.refusal.code === 'above-saturation';
  return isFog ? { ok: true, value: 1 } : relative;
}
