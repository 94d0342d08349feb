import { FIGURE_GROUPS, type Figure, type FigureGroup, figureWords } from '../figures';
import type { Scene } from '../scene';
import { type Formatter, formatterFor, type Units } from '../units';
import { planTitle } from './jsonFormat';
import { wrapText } from './wrapText';

/** The figures of one plan for people: by group, names and values in columns. `width`: letters a line. */
export function renderFigures(file: string, { plan }: Scene, figures: readonly Figure[], units: Units, width: number): string {
  const f = formatterFor(units);
  const title = planTitle(plan);
  const rows = figures.map((figure) => createRow(figure, f));
  const nameWidth = Math.max(0, ...rows.map(({ name }) => name.length));
  const valueWidth = Math.max(0, ...rows.map(({ value }) => value.length));
  const groups = FIGURE_GROUPS.filter((group) => rows.some((row) => row.group === group));
  const renderGroup = (group: FigureGroup) =>
    rows.filter((row) => row.group === group).flatMap((row) => renderRow(row, nameWidth, valueWidth, width));
  return [
    `${file}${title === '' ? '' : `  (${title})`}`,
    ...groups.flatMap((group) => ['', group, ...renderGroup(group)]),
    ...(rows.length === 0 ? ['', 'Nothing can be computed yet.'] : []),
    '',
    'Preliminary: the machine’s own plate, local code and licensed trades decide.',
    '',
  ].join('\n');
}

interface Row {
  group: FigureGroup;
  name: string;
  value: string;
  rest: string;
}

function createRow({ group, title, part, subjects, value, unit, ask, refusal, note }: Figure, f: Formatter): Row {
  const open = ask === null ? (refusal ?? '') : `missing: ${ask.input}`;
  const rest = [subjects[0] ?? '', open, note ?? ''].filter((words) => words !== '').join('; ');
  const mark = ask === null ? '—' : '?';
  return {
    group,
    name: part === null ? title : `${title}, ${part}`,
    value: value === null ? mark : figureWords(value, unit, f, group),
    rest,
  };
}

/** Room that the last column must have beside the others; with less it goes below them. */
const LEAST_REST = 24;
const INDENT = 2;
const GAP = 2;

function renderRow({ name, value, rest }: Row, nameWidth: number, valueWidth: number, width: number): string[] {
  const head = `${' '.repeat(INDENT)}${name.padEnd(nameWidth)}${' '.repeat(GAP)}${value.padStart(valueWidth)}`;
  const isBeside = width - head.length - GAP >= LEAST_REST;
  const indent = isBeside ? head.length + GAP : 2 * INDENT;
  const lines = wrapText(rest, Math.max(LEAST_REST, width - indent));
  const padded = lines.map((line) => `${' '.repeat(indent)}${line}`);
  if (rest === '') return [head];
  return isBeside ? [`${head}${' '.repeat(GAP)}${lines[0]}`, ...padded.slice(1)] : [head, ...padded];
}
