import { type FormulaRecord, type FormulaSource, findOutOfRange, type Outcome } from '../../record';

/** How air comes into a duct, with the coefficient on the duct's velocity pressure. */
interface Entry {
  coefficient: number;
  source: FormulaSource;
}

const acgih = (row: string): FormulaSource => ({
  text: `ACGIH Industrial Ventilation, 24th ed. 2001, hood entry losses (${row})`,
  confidence: 'secondary',
});

/** Entries of one value. Where sources differ the larger stands: flush and sharp is 0.50 in four of them and 0.57 in Rennels. */
export const DUCT_ENTRIES = {
  'plain-end': { coefficient: 0.93, source: acgih('A-X1') },
  'flanged-end': { coefficient: 0.49, source: acgih('A-X2') },
  'bellmouth-hood': { coefficient: 0.04, source: acgih('A-X3') },
  'tapered-take-off': { coefficient: 0.4, source: acgih('A-X4') },
  'straight-take-off': { coefficient: 0.65, source: acgih('A-X4') },
  'flush-sharp': { coefficient: 0.5, source: { text: 'Idelchik and others, as in the fluids library (A-X5)', confidence: 'read' } },
  'flush-sharp-stricter': { coefficient: 0.57, source: { text: 'Rennels, as in the fluids library (A-X5)', confidence: 'read' } },
} satisfies Record<string, Entry>;

export type DuctEntryKind = keyof typeof DUCT_ENTRIES;
export const DUCT_ENTRY_KINDS = Object.keys(DUCT_ENTRIES) as DuctEntryKind[];

export interface DuctEntryInputs {
  entry: DuctEntryKind;
}

/** Loss coefficient of an entry. */
export function ductEntry(inputs: DuctEntryInputs): Outcome {
  const reason = findOutOfRange(ductEntryRecord, inputs);
  return reason === null ? { ok: true, value: DUCT_ENTRIES[inputs.entry].coefficient } : { ok: false, reason };
}

export const ductEntryRecord: FormulaRecord<DuctEntryInputs> = {
  id: 'duct-entry',
  title: 'Loss of an entry',
  formula: 'C by the kind of entry',
  inputs: { entry: { text: 'Kind of entry', choices: DUCT_ENTRY_KINDS } },
  result: { text: 'Loss coefficient on the velocity pressure', unit: 'ratio', min: 0, max: 1 },
  source: DUCT_ENTRY_KINDS.map((kind) => DUCT_ENTRIES[kind].source).filter(isFirst),
  examples: DUCT_ENTRY_KINDS.map((entry) => ({
    kind: 'source',
    from: DUCT_ENTRIES[entry].source.text,
    inputs: { entry },
    result: DUCT_ENTRIES[entry].coefficient,
    tolerance: 0,
  })),
};

function isFirst(source: FormulaSource, index: number, all: FormulaSource[]): boolean {
  return all.findIndex(({ text }) => text === source.text) === index;
}
