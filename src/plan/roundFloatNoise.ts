import { current, type Draft, isDraft, original } from 'immer';
import type { Plan } from './planSchema';

/**
 * What binary arithmetic leaves behind (3962.2999999999997) is a thousand times smaller than the ninth decimal, and the
 * slack of the checks a thousand times larger: sixty-fourths of an inch and whatever was set exactly on a limit stay so.
 * Slopes, which stretch over metres, have three decimals more.
 */
const [LEAST, DECIMALS, DECIMALS_BELOW_ONE] = [1e-9, 1e9, 1e12];

/** Rounds the numbers that a recipe has changed or added, and no others. */
export function roundFloatNoise(draft: Draft<Plan>): void {
  settle(draft, current(draft));
}

type Members = Record<string, unknown>;

/** `now` is what the draft holds at this moment; its parts that nobody changed are those of the original. */
function settle(draft: object, now: object): void {
  const before = original(draft) as Members;
  const members = draft as Members;
  for (const [key, value] of Object.entries(now)) {
    if (value === before[key] || isMoved(value, before)) continue;
    const child = members[key];
    if (isObject(value) && isDraft(child)) settle(child as object, value);
    else {
      const rounded = roundIn(value);
      if (rounded !== value) members[key] = rounded;
    }
  }
}

/** A part of the original that only stands elsewhere in its list. */
const isMoved = (value: unknown, before: object) => isObject(value) && Array.isArray(before) && before.includes(value);

/** The same value where there is nothing to round; what a recipe brought along is copied, since others may hold it. */
function roundIn(value: unknown): unknown {
  if (typeof value === 'number') return roundNumber(value);
  if (!isObject(value)) return value;
  const entries = Object.entries(value).map(([key, item]) => [key, roundIn(item)] as const);
  if (entries.every(([key, item]) => item === (value as Members)[key])) return value;
  return Array.isArray(value) ? entries.map(([, item]) => item) : Object.fromEntries(entries);
}

/** NaN and infinity stay what they are: the validation refuses them by name. */
function roundNumber(value: number): number {
  const size = Math.abs(value);
  if (size < LEAST) return 0;
  const scale = size < 1 ? DECIMALS_BELOW_ONE : DECIMALS;
  const rounded = Math.round(value * scale) / scale;
  return Number.isFinite(rounded) ? rounded : value;
}

const isObject = (value: unknown): value is object => typeof value === 'object' && value !== null;
