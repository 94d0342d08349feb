import { createRefusal, type FormulaResult, type FormulaSource } from '../../../../rules';
import { type AmpacityTable, HELD_AMPACITY, judgeAmpacityTable, type Terminal } from '../ampacity';
import { WIRE_SIZES, type WireSize } from './wire';

/** Largest breaker in amperes on small copper wire, NEC 240.4(D) as public files restate it. */
export const SMALL_WIRE_BREAKERS: Readonly<Partial<Record<WireSize, number>>> = { '14': 15, '12': 20, '10': 30 };

export const CONDUCTOR_SOURCES: readonly FormulaSource[] = [
  { text: 'NEC 240.4(D), 110.14(C), in public files', documents: ['nec'], confidence: 'secondary' },
  { text: 'The exception for equipment that is marked for 75 °C', documents: ['nec'], confidence: 'memory' },
];

/** Column that counts for a circuit: 60 °C up to 100 A unless the equipment is marked for 75 °C, above that 75 °C. */
export const terminalOf = (breakerA: number, markedFor75C: boolean): Terminal => (breakerA > 100 || markedFor75C ? '75C' : '60C');

/**
 * Least copper wire for a breaker, by the public single values and what the user's own copy of the table adds. It
 * refuses where a size in between is not held rather than skip to a thick one. Preliminary: a licensed electrician decides.
 */
export function chooseConductor(breakerA: number, terminal: Terminal, own: AmpacityTable = {}): FormulaResult<WireSize> {
  const about = { input: 'breakerA', value: breakerA };
  if (!(breakerA > 0)) return { ok: false, refusal: createRefusal(CONDUCTOR, 'not-above-least', {}, { ...about, min: 0 }) };
  const judged = judgeAmpacityTable(own);
  if (!judged.pass) return { ok: false, refusal: judged.refusal };
  for (const size of WIRE_SIZES) {
    const carries = own[size]?.[terminal] ?? HELD_AMPACITY[size]?.[terminal];
    if (carries === undefined) return { ok: false, refusal: createRefusal(CONDUCTOR, 'wire-not-held', { breakerA, size, terminal }) };
    if (carries >= breakerA && breakerA <= (SMALL_WIRE_BREAKERS[size] ?? Number.POSITIVE_INFINITY)) return { ok: true, value: size };
  }
  return { ok: false, refusal: createRefusal(CONDUCTOR, 'no-wire-held', {}, about) };
}

const CONDUCTOR = { id: 'conductor', title: 'Wire of a circuit' };
