import type { Formatter } from '../../units';

/** The figures of a dimension: metric drawings give millimetres without the unit, which the sheet states once (ISO 129-1). */
export function figures(f: Formatter, mm: number): string {
  return f.units === 'metric' ? String(Math.round(mm)) : f.length(mm);
}
