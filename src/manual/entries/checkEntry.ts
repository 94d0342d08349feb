import { measureWords, RELATION_WORDS } from '../../drawing';
import type { Check, Finding, MeasureUnit, Relation } from '../../rules';
import type { Formatter } from '../../units';
import type { ManualEntry } from '../types';

/** A check: why it is made, what it holds, and where that comes from. `findings` are its own on the sample lines. */
export function createCheckEntry(check: Check, findings: readonly Finding[], f: Formatter): ManualEntry {
  const { id, title, why, source } = check;
  const group = check.group ?? 'line';
  const rows = limitRows(check, findings, f);
  return {
    id: `check/${id}`,
    kind: 'check',
    title,
    group,
    parts: [
      { kind: 'text', text: why },
      rows.length > 0
        ? { kind: 'table', title: 'What it holds', head: ['Measured', 'Must be', 'Better'], rows }
        : { kind: 'text', text: 'Its limit depends on the plan; the finding says it.' },
      { kind: 'facts', rows: [...sourceRows(source), ['Id', id]] },
    ],
  };
}

function sourceRows(source: Check['source']): [string, string][] {
  if (source.kind !== 'published') return [['Source', `${KINDS[source.kind]}: ${source.text}`]];
  return [
    ['Source', `${source.document}, ${source.section}`],
    [
      'Known from',
      { read: 'the text itself', secondary: 'a restatement', memory: 'memory, unchecked; never more than a watch' }[source.confidence],
    ],
  ];
}

const KINDS = { 'data-sheet': 'The machine’s data sheet', 'common-practice': 'Common practice', geometry: 'Geometry of the plan' } as const;

interface Held {
  part: string | null;
  relation: Relation;
  unit: MeasureUnit;
  limits: Finding[];
}

/** A row for each thing that the check measures. Where the limit hangs on the machine or the plan, from where to where it goes. */
function limitRows({ unit, group }: Check, findings: readonly Finding[], f: Formatter): string[][] {
  const held = new Map<string, Held>();
  for (const finding of findings.filter(({ limit }) => limit !== null)) {
    const key = `${finding.part}|${finding.relation}|${finding.unit}`;
    const row = held.get(key) ?? { part: finding.part, relation: finding.relation, unit: finding.unit ?? unit, limits: [] };
    row.limits.push(finding);
    held.set(key, row);
  }
  return [...held.values()].map(({ part, relation, unit: own, limits }) => {
    const words = (value: number | string | boolean) => measureWords(value, own, f, group ?? 'line');
    const must = spanWords(
      limits.map(({ limit }) => limit).filter((limit) => limit !== null),
      words,
    );
    const better = spanWords(
      limits.map(({ watchLimit }) => watchLimit).filter((limit) => limit !== null),
      words,
    );
    return [
      part === null ? 'what the title says' : part.replaceAll('-', ' '),
      limits.every(({ limit }) => typeof limit === 'number') ? `${RELATION_WORDS[relation]} ${must}` : must,
      better === '' ? '' : better,
    ];
  });
}

/** The one value that they all have, or the least and the greatest. */
function spanWords(values: readonly (number | string | boolean)[], words: (value: number | string | boolean) => string): string {
  const numbers = values.filter((value) => typeof value === 'number');
  if (numbers.length < values.length || numbers.length === 0) return [...new Set(values.map(words))].slice(0, 4).join(' or ');
  const [low, high] = [words(Math.min(...numbers)), words(Math.max(...numbers))];
  return low === high ? low : `${low} to ${high}, by machine and plan`;
}
