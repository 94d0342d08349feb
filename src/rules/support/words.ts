/** `a`, `a and b`, `a, b and c`. */
export function list(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** `208 V single-phase`. */
export const powerWords = (voltage: number, phase: 1 | 3) => `${voltage} V ${phaseWords(phase)}`;

/** `single-phase`, `three-phase`. */
export const phaseWords = (phase: 1 | 3) => (phase === 1 ? 'single-phase' : 'three-phase');
