import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { STATIC_PRESSURE } from '../../src/topics/water';
import { toSI } from '../../src/units';

// source: UPC 608.2 (2015), as IAPMO prints it: above 80 psi (552 kPa) a pressure-reducing valve · read · exact psi, whole kPa
test.each([
  [80, 'pass'],
  [80.1, 'high'],
] as const)('%d psi static: %s', (psi, expected) => {
  expect(judge(STATIC_PRESSURE, toSI(psi, 'psi'))).toBe(expected);
  expect(Math.round((STATIC_PRESSURE.max ?? 0) / 1000)).toBe(552);
});
