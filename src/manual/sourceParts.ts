import type { FormulaSource } from '../rules';
import type { ManualPart } from './types';

/** How far a source can be trusted, in words. */
export const CONFIDENCE: Record<FormulaSource['confidence'], string> = {
  read: 'the text itself',
  secondary: 'as restated elsewhere',
  memory: 'from memory, unchecked',
  practice: 'common practice, in no document',
  geometry: 'follows from the drawing or by arithmetic',
};

/** Where something comes from, each source with how far it can be trusted. */
export function sourcePart(sources: readonly FormulaSource[]): ManualPart {
  return {
    kind: 'table',
    title: sources.length === 1 ? 'Source' : 'Sources',
    head: ['Source', 'Known from'],
    rows: sources.map(({ text, confidence }) => [text, CONFIDENCE[confidence]]),
  };
}
