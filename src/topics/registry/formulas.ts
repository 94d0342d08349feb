import { type Entries, type EntryRow, type Formula, inOrder, type Limit, type RuleRecord } from '../../rules';

const FILES = import.meta.glob<Entries>('../*/formulas/*.ts', { eager: true, import: 'entries' });

/** Heading of the manual by topic. */
const GROUPS: Readonly<Record<string, string>> = {
  line: 'line',
  room: 'room',
  hood: 'air',
  duct: 'air',
  air: 'air',
  water: 'water',
  heat: 'heat',
  drain: 'drain',
  power: 'power',
  people: 'people',
  cleanliness: 'sanitary',
  capacity: 'capacity',
};

const ROWS: readonly Required<EntryRow>[] = inOrder(
  Object.entries(FILES).flatMap(([path, entries]) => {
    const group = GROUPS[path.split('/')[1] ?? ''] ?? '';
    return entries.map((row) => ({ group, formulas: [], limits: [], rules: [], ...row }));
  }),
);

/** Every formula, by the order of the manual. */
export const FORMULAS: readonly Formula[] = ROWS.flatMap(({ formulas }) => formulas);

/** Every bound out of a document that is no formula. */
export const LIMITS: readonly Limit[] = ROWS.flatMap(({ limits }) => limits);

/** Every rule that is no single number. */
export const RULES: readonly RuleRecord[] = ROWS.flatMap(({ rules }) => rules);

const GROUP_OF = new Map<object, string>(
  ROWS.flatMap(({ group, formulas, limits, rules }) => [...formulas, ...limits, ...rules].map((item) => [item, group] as const)),
);

/** The heading of the manual under which it stands. */
export const groupOf = (item: Formula | Limit | RuleRecord): string => GROUP_OF.get(item) ?? '';
