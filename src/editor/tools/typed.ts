import { parseLength, type Units } from '../../units';
import type { KeyInput } from '../types';

/** Characters of a length as people type it. The first must be a figure, so that letters stay free for other keys. */
const LENGTH_CHARACTER = /^[\d.,/'"′″½¼¾ +ftincm-]$/i;

/** What has been typed after one more key; null when the key is no part of a length. */
export function typeKey(typed: string, { key, ctrl, alt }: KeyInput): string | null {
  if (ctrl || alt) return null;
  if (key === 'Backspace') return typed === '' ? null : typed.slice(0, -1);
  if (!LENGTH_CHARACTER.test(key) || (typed === '' && !/[\d.]/.test(key)) || typed.length >= 20) return null;
  return typed + key;
}

/** The typed length, mm; null where nothing was typed or it can't be read. */
export function typedLength(typed: string, units: Units): number | null {
  if (typed === '') return null;
  const read = parseLength(typed, units === 'us' ? 'in' : 'mm');
  return read.ok && read.mm > 0 ? read.mm : null;
}
