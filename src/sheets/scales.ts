import type { Units } from '../units';

/** Reductions of ISO 5455 (from memory), as the n of 1 : n. */
const ISO_SCALES = [10, 20, 50, 100, 200, 500, 1000];

/** US scales: so many inches of paper to a foot. */
const US_SCALES: readonly (readonly [number, string])[] = [
  [4, '3″ = 1′ 0″'],
  [8, '1 ½″ = 1′ 0″'],
  [12, '1″ = 1′ 0″'],
  [16, '¾″ = 1′ 0″'],
  [24, '½″ = 1′ 0″'],
  [32, '⅜″ = 1′ 0″'],
  [48, '¼″ = 1′ 0″'],
  [64, '³⁄₁₆″ = 1′ 0″'],
  [96, '⅛″ = 1′ 0″'],
  [192, '¹⁄₁₆″ = 1′ 0″'],
];

/** The usual scales of a system of units, the largest picture first. */
export const usualScales = (units: Units): number[] => (units === 'metric' ? ISO_SCALES : US_SCALES.map(([n]) => n).filter((n) => n >= 12));

/** A scale for people: `1 : 50`, `¼″ = 1′ 0″ (1 : 48)`. */
export function scaleWords(denominator: number, units: Units): string {
  const ratio = `1 : ${Number(denominator.toFixed(2))}`;
  const us = units === 'us' ? US_SCALES.find(([n]) => n === denominator) : undefined;
  return us === undefined ? ratio : `${us[1]} (${ratio})`;
}

/** A scale as people type it, `1:50` or `50`; null when it is none from 1 : 1 to 1 : 5000. */
export function parseScale(text: string): number | null {
  const match = /^(?:1\s*:\s*)?(\d+(?:\.\d+)?)$/.exec(text.trim());
  const denominator = Number(match?.[1]);
  return match !== null && denominator >= 1 && denominator <= 5000 ? denominator : null;
}
