import { FIGURE_GROUPS, type Figure, type FigureGroup } from '../rules';
import type { Scene } from '../scene';
import { askWords, figureWords, notesWords, partWords, refusalWords } from '../text';
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
  subject: string;
  /** What is missing, why it does not hold, and the note. */
  words: string;
}

function createRow(figure: Figure, f: Formatter): Row {
  const { group, title, part, subjects, value, unit, ask, refusal } = figure;
  const why = refusal === null ? null : refusalWords(refusal, f, group);
  const open = ask === null ? why : `Missing: ${askWords(ask, f)}.`;
  return {
    group,
    name: part === null ? title : `${title}, ${partWords(part)}`,
    value: value === null ? (ask === null ? '—' : '?') : figureWords(value, unit, f, group),
    subject: subjects[0] ?? '',
    words: [open, notesWords(figure, f)].filter((text) => text !== null).join(' '),
  };
}

const GAP = '  ';
const INDENT = 2 * GAP.length;

/** Name, value and subject in columns; below them, farther in, what there is to say. */
function renderRow({ name, value, subject, words }: Row, nameWidth: number, valueWidth: number, width: number): string[] {
  const head = `${GAP}${name.padEnd(nameWidth)}${GAP}${value.padStart(valueWidth)}${GAP}${subject}`.trimEnd();
  const below = words === '' ? [] : wrapText(words, Math.max(40, width - INDENT));
  return [head, ...below.map((line) => `${' '.repeat(INDENT)}${line}`)];
}
