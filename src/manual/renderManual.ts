import { sentence } from '../text';
import { MANUAL_KINDS, type ManualEntry, type ManualKind, type ManualPart } from './types';

/** Headings of the manual's chapters. */
export const CHAPTERS: Record<ManualKind, string> = {
  check: 'Checks',
  figure: 'Figures',
  formula: 'Formulas',
  limit: 'Limits',
  rule: 'Rules',
  source: 'Sources',
};

/** The manual as one Markdown text: a contents, then a chapter of each kind, its entries by group. */
export function renderManual(entries: readonly ManualEntry[]): string {
  const chapters = MANUAL_KINDS.map((kind) => ({ kind, own: entries.filter((entry) => entry.kind === kind) }));
  const titles = new Map(entries.map(({ id, title }) => [id, title]));
  return [
    '# Rackway: manual',
    'Made from what the program itself holds. Preliminary: the machine’s own plate, local code and licensed trades decide.',
    chapters.map(({ kind, own }) => `- [${CHAPTERS[kind]}](#${kind}): ${own.length}`).join('\n'),
    ...chapters.flatMap(({ kind, own }) => [`<a id="${kind}"></a>\n## ${CHAPTERS[kind]}`, ...renderGroups(own, titles)]),
  ]
    .join('\n\n')
    .concat('\n');
}

function renderGroups(entries: readonly ManualEntry[], titles: ReadonlyMap<string, string>): string[] {
  const groups = [...new Set(entries.map(({ group }) => group))];
  return groups.flatMap((group) => [
    `### ${sentence(group)}`,
    ...entries.filter((entry) => entry.group === group).flatMap((entry) => renderEntry(entry, titles)),
  ]);
}

const renderEntry = ({ id, title, parts }: ManualEntry, titles: ReadonlyMap<string, string>) => [
  `<a id="${anchor(id)}"></a>\n#### ${escape(title)}`,
  ...parts.map((part) => renderPart(part, titles)),
];

function renderPart(part: ManualPart, titles: ReadonlyMap<string, string>): string {
  switch (part.kind) {
    case 'text':
      return escape(part.text);
    case 'formula':
      return ['```', part.text, '```'].join('\n');
    case 'facts':
      return part.rows.map(([name, value]) => `- ${escape(name)}: ${escape(value)}`).join('\n');
    case 'table':
      return [`**${escape(part.title)}**`, renderTable(part.head, part.rows)].join('\n\n');
    case 'links':
      return [`**${escape(part.title)}**`, part.to.map((id) => `- [${escape(titles.get(id) ?? id)}](#${anchor(id)})`).join('\n')].join(
        '\n\n',
      );
  }
}

function renderTable(head: readonly string[], rows: readonly (readonly string[])[]): string {
  const row = (cells: readonly string[]) => `| ${cells.map((cell) => escape(cell) || ' ').join(' | ')} |`;
  return [row(head), row(head.map(() => '---')), ...rows.map(row)].join('\n');
}

const anchor = (id: string) => id.replace('/', '-');

/** What Markdown would take for its own signs. */
const escape = (text: string) => (text === '---' ? text : text.replaceAll(/[\\`*_<>|[\]#]/g, String.raw`\$&`).replaceAll('\n', ' '));
