import type { Plan } from '../../../../plan';
import { createMessages, type FormulaResult, type NoParams } from '../../../../rules';
import { SUPPLY_KINDS, voltsToGround } from '../../formulas/voltsToGround';
import { type WorkingCondition, workingDepth } from '../../formulas/workingSpace';

/** The least and the most that the voltage to ground may be. */
export interface ToGround {
  leastV: number;
  mostV: number;
}

/**
 * Voltage to ground of what is fed with a voltage: what the plan states of its supply, no more than that voltage itself; else
 * every way of earthing a supply, from the least to the most that it gives.
 */
export function toGroundOf({ supply }: Plan, voltageV: number): FormulaResult<ToGround> {
  const { toGroundV } = supply;
  if (toGroundV !== null) {
    const volts = Math.min(toGroundV, voltageV);
    return { ok: true, value: { leastV: volts, mostV: volts } };
  }
  const volts: number[] = [];
  for (const kind of SUPPLY_KINDS) {
    const found = voltsToGround({ voltageV, supply: kind });
    if (!found.ok) return found;
    volts.push(found.value);
  }
  return { ok: true, value: { leastV: Math.min(...volts), mostV: Math.max(...volts) } };
}

/** Free depth in metres that may be needed before live parts: `least` and `most` differ where the voltage to ground decides. */
export interface DepthsNeeded {
  least: number;
  most: number;
}

export function depthsNeeded({ leastV, mostV }: ToGround, condition: WorkingCondition): FormulaResult<DepthsNeeded> {
  const least = workingDepth({ voltsToGround: leastV, condition });
  const most = workingDepth({ voltsToGround: mostV, condition });
  if (!least.ok) return least;
  return most.ok ? { ok: true, value: { least: least.value, most: most.value } } : most;
}

export interface ToGroundMessages {
  'power/ask-to-ground': NoParams;
}

const say = createMessages<ToGroundMessages>();

/** What is asked for where it decides. */
export const TO_GROUND = { input: say('power/ask-to-ground'), path: ['supply', 'toGroundV'] };
