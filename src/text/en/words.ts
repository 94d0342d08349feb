import type { Side } from '../../catalog';
import type { Configuration, Hand } from '../../scene';
import type { Aisle, Pass, Pinch } from '../../topics/room';
import type { Formatter } from '../../units';
import { nameWords } from './names';

/** `1 rack`, `2 racks`, `no racks`. */
export function count(n: number, one: string, many = `${one}s`): string {
  return `${n === 0 ? 'no' : n} ${n === 1 ? one : many}`;
}

/** `a`, `a and b`, `a, b and c`. */
export function list(items: readonly string[], last = 'and'): string {
  if (items.length < 2) return items.join('');
  return `${items.slice(0, -1).join(', ')} ${last} ${items.at(-1)}`;
}

/** Begins with a capital. */
export const sentence = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

/** `left to right`. */
export const handWords = (hand: Hand) => hand.replaceAll('-', ' ');

/** `straight through`, `a corner`, or `neither straight through nor a corner`. */
export function configurationWords(kind: Configuration['kind']): string {
  if (kind === 'none') return 'neither straight through nor a corner';
  return kind === 'straight' ? 'straight through' : 'a corner';
}

/** `its left side`, `its front`, `its back`. */
export const sideWords = (side: Side) => (side === 'left' || side === 'right' ? `its ${side} side` : `its ${side}`);

/** `208 V single-phase`. */
export const powerWords = (voltage: number, phase: 1 | 3) => `${voltage} V ${phaseWords(phase)}`;

/** `single-phase`, `three-phase`. */
export const phaseWords = (phase: 1 | 3) => (phase === 1 ? 'single-phase' : 'three-phase');

/** `two`, `three`; figures above ten. */
export const numberWord = (n: number) => NUMBERS[n] ?? String(n);

const NUMBERS = ['no', 'one', 'two', 'three', 'four', 'five', 'six', 'seven', 'eight', 'nine', 'ten'];

/** At most one decimal, and none where it would be 0: `4`, `2.6`. */
export const decimal = (n: number) => String(Math.round(n * 10) / 10);

/** What stands at both ends of a pinch: ` between the cart and the wall`; what only hangs there says how low. Nothing where nothing is known. */
export function pinchWords(pinch: Pinch, f: Formatter): string {
  const names = [...new Set(pinch.map((end) => pinchEndWords(end, f)))];
  if (names.length >= 2) return ` between ${list(names)}`;
  return pinch[0]?.name.kind === 'wall' ? ' between the walls' : names.map((name) => ` beside ${name}`).join('');
}

const pinchEndWords = ({ name, hangs }: Pinch[number], f: Formatter) =>
  hangs === null
    ? nameWords(name)
    : `${nameWords(name)} (it hangs ${f.length(hangs.at)} above the floor, heads need ${f.length(hangs.needed)})`;

/** `3′ 0″ is wanted in an aisle`, and that the plan says so where it is not the guide's width. */
export const aisleWords = ({ wanted, isSetting }: Aisle, f: Formatter): string =>
  `${f.length(wanted)} is wanted in an aisle${isSetting ? ' by the setting of this plan' : ''}`;

/** `2′ 4″ is needed`, and that an exit access needs it where the plan's setting is below it. */
export const passWords = ({ needed, setting }: Pass, f: Formatter): string =>
  `${f.length(needed)} is needed${setting === null ? '' : ` to get out, whatever the plan’s setting of ${f.length(setting)}`}`;
