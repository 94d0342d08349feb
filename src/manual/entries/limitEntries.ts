import type { Limit, RuleRecord } from '../../engineering';
import { figureWords } from '../../figures';
import type { Formatter } from '../../units';
import { sourcePart } from '../sourceParts';
import type { ManualEntry } from '../types';

/** A bound out of a document. */
export function createLimitEntry({ id, title, unit, min, max, source }: Limit, group: string, f: Formatter): ManualEntry {
  const bound = (name: string, value: number | null): [string, string][] =>
    value === null ? [] : [[name, figureWords(value, unit, f, group)]];
  return {
    id: `limit/${id}`,
    kind: 'limit',
    title,
    group,
    parts: [{ kind: 'facts', rows: [...bound('At least', min), ...bound('At most', max)] }, sourcePart(source)],
  };
}

/** A rule that is no single number. */
export const createRuleEntry = ({ id, title, rule, source }: RuleRecord, group: string): ManualEntry => ({
  id: `rule/${id}`,
  kind: 'rule',
  title,
  group,
  parts: [{ kind: 'text', text: rule }, sourcePart(source)],
});
