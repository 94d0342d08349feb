/** A fraction below 1 as one reads it: the character of its own where there is one, else raised and lowered figures. */
export function formatFraction(above: number, below: number): string {
  const shared = greatestCommonDivisor(above, below);
  const [n, d] = [above / shared, below / shared];
  return OWN_CHARACTER[`${n}/${d}`] ?? `${inDigits(n, RAISED)}\u2044${inDigits(d, LOWERED)}`;
}

const OWN_CHARACTER: Readonly<Record<string, string>> = {
  '1/2': '½',
  '1/4': '¼',
  '3/4': '¾',
  '1/8': '⅛',
  '3/8': '⅜',
  '5/8': '⅝',
  '7/8': '⅞',
};

const RAISED = '⁰¹²³⁴⁵⁶⁷⁸⁹';
const LOWERED = '₀₁₂₃₄₅₆₇₈₉';

const inDigits = (n: number, digits: string) => [...String(n)].map((digit) => digits[Number(digit)]).join('');

function greatestCommonDivisor(a: number, b: number): number {
  return b === 0 ? a : greatestCommonDivisor(b, a % b);
}
