import { type Limit, type RuleRecord } from '../../rules';
import { figureWords } from '../../text';
import type { Formatter } from '../../units';
import { sourcePart } from '../sourceParts';
import type { ManualEntry, ManualPart } from '../types';

const FOR_REFERENCE: ManualPart = {
  kind: 'text',
  text: 'For reference: no check and no figure holds the plan against it. Look to it yourself.',
};

/** A bound out of a document; one that nothing is held against says so. */
export function createLimitEntry({ id, title, unit, min, max, source, isForReference }: Limit, group: string, f: Formatter): ManualEntry {
  const bound = (name: string, value: number | null): [string, string][] =>
    value === null ? [] : [[name, figureWords(value, unit, f, group)]];
  return {
    id: `limit/${id}`,
    kind: 'limit',
    title,
    group,
    parts: [
      { kind: 'facts', rows: [...bound('At least', min), ...bound('At most', max)] },
      ...(isForReference === true ? [FOR_REFERENCE] : []),
      sourcePart(source),
    ],
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
