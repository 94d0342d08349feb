import { formatWithUnit } from './formatNumber';
import type { Units } from './system';

const MM2_PER_FT2 = 304.8 ** 2;
const MM2_PER_M2 = 1e6;

/** An area given in mm² as people read it: whole `ft²` from 100 on, one decimal below; `m²` with one decimal, two below 10. */
export function formatArea(mm2: number, units: Units): string {
  if (units === 'metric') return formatWithUnit(mm2 / MM2_PER_M2, 'm²', Math.abs(mm2 / MM2_PER_M2) < 10 ? 2 : 1);
  return formatWithUnit(mm2 / MM2_PER_FT2, 'ft²', Math.abs(mm2 / MM2_PER_FT2) < 100 ? 1 : 0);
}
