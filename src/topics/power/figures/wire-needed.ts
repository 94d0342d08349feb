import { createMessages, type Derivation, type FigureReading, type FigureRule, readFigure } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';
import { ampacityRecord, type Terminal } from '../formulas/ampacity';
import { CONDUCTOR_SOURCES, chooseConductor, terminalOf } from '../formulas/support/conductor';
import { gaugeOf } from '../formulas/support/wire';
import { rule as breakerRule } from './breaker-size';
import { POWER_CAUTION } from './support/power';

export const rule: FigureRule = {
  id: 'wire-needed',
  order: 700,
  title: 'Least copper wire for the breaker',
  group: 'power',
  unit: 'AWG',
  derive: (scene) => scene.machines.map((placed) => deriveReading(scene, placed)),
};

/** What is said of how it was found. */
export interface WireNeededMessages {
  /** The breaker of the plan, or the next standard one. */
  'wire-needed/for-breaker': { breaker: 'plan' | 'next' };
  'wire-needed/terminals': { terminal: Terminal };
}

const say = createMessages<WireNeededMessages>();

/** For the breaker of the plan, else for the next standard one; a size between the single values that are public refuses. */
function deriveReading(scene: Scene, { machine }: PlacedMachine): FigureReading {
  const { breakerA, markedFor75C } = machine.hookUp;
  const standard = readFigure(breakerRule, scene).find(({ subjects }) => subjects[0] === machine.id);
  const rating = breakerA ?? standard?.value ?? null;
  if (rating === null) return { subjects: [machine.id], ...(standard ?? { value: null, how: null }) };
  const terminal = terminalOf(rating, markedFor75C === true);
  const chosen = chooseConductor(rating, terminal);
  return {
    subjects: [machine.id],
    value: chosen.ok ? gaugeOf(chosen.value) : null,
    ...(chosen.ok ? {} : { refusal: chosen.refusal }),
    how: howFor(rating, terminal),
    notes: [
      say('wire-needed/for-breaker', { breaker: breakerA === null ? 'next' : 'plan' }),
      say('wire-needed/terminals', { terminal }),
      POWER_CAUTION,
    ],
  };
}

const howFor = (breakerA: number, terminal: Terminal): Derivation => ({
  formula: 'the least copper wire whose table value at that terminal is at least the breaker; 14, 12, 10 AWG at most 15, 20, 30 A',
  inputs: [
    { name: 'Breaker', value: breakerA, unit: 'A' },
    { name: 'Temperature that the terminals may have', value: terminal === '75C' ? '75 °C' : '60 °C', unit: 'word' },
  ],
  source: [...CONDUCTOR_SOURCES, ...ampacityRecord.source],
});
