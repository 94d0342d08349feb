import type { MeasuredValue, MeasureUnit } from '../../checks';
import type { Formatter } from '../../units';

/** A measured value or limit as people read it. */
export function formatMeasured(value: MeasuredValue | null, unit: MeasureUnit, format: Formatter): string {
  if (value === null) return '—';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value;
  if (!Number.isFinite(value)) return 'no limit';
  if (unit === 'mm') return format.length(value);
  if (unit === 'ratio') return format.slope(value);
  if (unit === 'deg') return format.angle(value);
  return String(Math.round(value * 100) / 100);
}
