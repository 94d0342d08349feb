import type { Machine, Plan } from '../../plan';
import { formatQuantity, fromSI, parseQuantity, shownUnit, type Units } from '../../units';
import { type CommandResult, carryOut, refusal } from '../line/commandResult';

type PlateRecord = Machine['hookUp']['plateRecord'];

/** The record of a plate's own thermometer as lines that people type: `12, 160`, in the units that they read. */
export const formatPlateRecord = (record: PlateRecord, units: Units): string =>
  record.map(({ at, tempC }) => `${bare(at)}, ${bare(fromSI(tempC, shownUnit('temperature', units)))}`).join('\n');

/** Finer than any such thermometer reads, so that what is kept again is what was kept before. */
const bare = (value: number) => String(Number(value.toFixed(2)));

/** Keeps what was typed or pasted as a machine's record; no text takes the record away. A refusal names the line. */
export function setPlateRecordText(plan: Plan, machineId: string, text: string, units: Units): CommandResult {
  const read = parsePlateRecord(text, units);
  if (!read.ok) return refusal(read.problem);
  return carryOut(plan, read.record.length === 0 ? 'Take the record of a plate away' : 'Record the temperatures at a plate', (draft) => {
    const machine = draft.machines.find(({ id }) => id === machineId);
    if (machine) machine.hookUp.plateRecord = read.record;
  });
}

type ReadRecord = { ok: true; record: PlateRecord } | { ok: false; problem: string };

/** Lines of seconds and a temperature, parted by a comma, a semicolon, a tab or spaces. A first line of words is a heading. */
function parsePlateRecord(text: string, units: Units): ReadRecord {
  const record: PlateRecord = [];
  for (const [index, line] of text.split(/\r\n|\r|\n/).entries()) {
    if (line.trim() === '' || (record.length === 0 && !/\d/.test(line))) continue;
    const read = parseLine(line.trim(), units, record.at(-1)?.at ?? null);
    if (!read.ok) return { ok: false, problem: `Line ${index + 1}: ${read.problem}` };
    record.push(read.point);
  }
  if (record.length > MOST) return { ok: false, problem: `There are ${record.length} readings; ${MOST} fit.` };
  return record.length === 1 ? { ok: false, problem: 'One reading makes no cycle: give two lines at least.' } : { ok: true, record };
}

const MOST = 500;
const LONGEST_S = 3600;
const HOTTEST_C = 120;

type ReadLine = { ok: true; point: PlateRecord[number] } | { ok: false; problem: string };

function parseLine(line: string, units: Units, lastAt: number | null): ReadLine {
  const parts = splitLine(line);
  if (parts === null)
    return { ok: false, problem: `“${line.slice(0, 40)}” is not seconds and a temperature, as in “12, ${units === 'us' ? 160 : 71}”.` };
  const at = parseQuantity(parts[0], 'duration', 's');
  if (!at.ok) return { ok: false, problem: at.reason };
  const temp = parseQuantity(parts[1], 'temperature', units);
  if (!temp.ok) return { ok: false, problem: temp.reason };
  const problem = whyNot(at.value, temp.value, units, lastAt);
  return problem === null ? { ok: true, point: { at: at.value, tempC: temp.value } } : { ok: false, problem };
}

function whyNot(at: number, tempC: number, units: Units, lastAt: number | null): string | null {
  const show = (value: number, kind: 'duration' | 'temperature') => formatQuantity(value, kind, units);
  if (at < 0 || at > LONGEST_S) return `${show(at, 'duration')} is outside of a cycle: 0 to ${show(LONGEST_S, 'duration')}.`;
  if (lastAt !== null && at <= lastAt) return `${show(at, 'duration')} does not come after ${show(lastAt, 'duration')}.`;
  if (tempC < 0 || tempC > HOTTEST_C)
    return `${show(tempC, 'temperature')} is no temperature of a plate: ${show(0, 'temperature')} to ${show(HOTTEST_C, 'temperature')}.`;
  return null;
}

/** Its two parts; null where there are not two. Numbers with a decimal comma need another sign between them. */
function splitLine(line: string): [string, string] | null {
  const parts = DECIMAL_COMMAS.test(line) ? line.split(/\s+/) : /[;\t]/.test(line) ? line.split(/\s*[;\t]\s*/) : split(line);
  const [at, temp, ...rest] = parts.filter((part) => part !== '');
  if (at === undefined || temp === undefined || rest.length > 0) return null;
  return [at.replace(',', '.'), temp.replace(',', '.')];
}

const DECIMAL_COMMAS = /^\d+,\d+\s+\d+,\d+$/;

function split(line: string): string[] {
  const [, at = '', temp = ''] = /^(\S+?(?: ?s(?:ec)?)?)(?:\s*,\s*|\s+)(.+)$/i.exec(line) ?? [];
  return temp.includes(',') ? [] : [at, temp];
}
