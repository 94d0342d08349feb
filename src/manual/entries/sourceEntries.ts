import { type FormulaSource, SOURCES, type SourceDocument, type SourceKey } from '../../rules';
import { FORMULAS, LIMITS, RULES } from '../../topics/registry';
import { CONFIDENCE } from '../sourceParts';
import type { ManualEntry, ManualPart } from '../types';

/** The bibliography: an entry for each document, those known best first, with what rests on it. */
export function createSourceEntries(): ManualEntry[] {
  const all = Object.entries(SOURCES) as [SourceKey, SourceDocument][];
  const order = Object.keys(CONFIDENCE);
  return all
    .toSorted(
      ([, one], [, other]) => order.indexOf(one.confidence) - order.indexOf(other.confidence) || one.title.localeCompare(other.title),
    )
    .map(([key, document]) => createSourceEntry(key, document));
}

function createSourceEntry(key: SourceKey, { title, edition, confidence, read }: SourceDocument): ManualEntry {
  const known: [string, string][] = edition === null ? [] : [['Edition', edition]];
  const to = RESTING.filter(({ source }) => source.some(({ documents }) => documents.includes(key))).map(({ id }) => id);
  return {
    id: `source/${key}`,
    kind: 'source',
    title,
    group: CONFIDENCE[confidence],
    parts: [
      { kind: 'facts', rows: [...known, ['What was read', read], ['Id', key]] },
      to.length > 0 ? { kind: 'links', title: 'What rests on it', to } : NAMED_ELSEWHERE,
    ],
  };
}

/** Formulas, limits and rules with their sources, by the ids of their entries. */
const RESTING: readonly { id: string; source: readonly FormulaSource[] }[] = [
  ...FORMULAS.map(({ record }) => ({ id: `formula/${record.id}`, source: record.source })),
  ...LIMITS.map(({ id, source }) => ({ id: `limit/${id}`, source })),
  ...RULES.map(({ id, source }) => ({ id: `rule/${id}`, source })),
];

const NAMED_ELSEWHERE: ManualPart = { kind: 'text', text: 'The figures and checks that rest on it name it where they are shown.' };
