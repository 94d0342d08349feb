import { type FigureReading, type FigureRule, type How, readFigure } from '../../../rules';
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
    note: `${breakerA === null ? 'For the next standard breaker.' : 'For the breaker of the plan.'} ${TERMINAL_NOTES[terminal]} ${POWER_CAUTION}`,
  };
}

const howFor = (breakerA: number, terminal: Terminal): How => ({
  formula: 'the least copper wire whose table value at that terminal is at least the breaker; 14, 12, 10 AWG at most 15, 20, 30 A',
  inputs: [
    { name: 'Breaker', value: breakerA, unit: 'A' },
    { name: 'Temperature that the terminals may have', value: terminal === '75C' ? '75 °C' : '60 °C', unit: 'word' },
  ],
  source: [...CONDUCTOR_SOURCES, ...ampacityRecord.source],
});

const TERMINAL_NOTES: Readonly<Record<Terminal, string>> = {
  '60C': 'Terminals of 60 °C, as up to 100 A unless the machine is marked for 75 °C.',
  '75C': 'Terminals of 75 °C, as the machine is marked, or above 100 A.',
};
