import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula, inches } from '../../../rules';

/** What kind of drain: a branch inside the building, or the building drain at a fall of ¼ or ⅛ in a foot. */
export const DRAIN_KINDS = ['branch', 'building-quarter', 'building-eighth'] as const;
export type DrainKind = (typeof DRAIN_KINDS)[number];

export interface BranchInputs {
  sizeM: number;
  kind: DrainKind;
}

/** Largest number of fixture units that a drain of a nominal size may carry. Only single values are held; the rest is the code's own table. */
export function branchUnits(inputs: BranchInputs): FormulaResult {
  const refusal = findOutOfRange(branchUnitsRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const units = HELD[inputs.kind].find(([size]) => Math.abs(inches(size) - inputs.sizeM) < 1e-4)?.[1];
  if (units !== undefined) return { ok: true, value: units };
  const about = { input: 'sizeM', value: inputs.sizeM };
  return { ok: false, refusal: createRefusal(branchUnitsRecord, 'nominal-size-not-held', {}, about) };
}

const also = 'nominal sizes of 2, 3 and 4 in are held, at ⅛ in/ft 3 and 4 in only; for others, the code itself';

const HELD: Readonly<Record<DrainKind, readonly (readonly [inches: number, units: number])[]>> = {
  branch: [
    [2, 6],
    [3, 20],
    [4, 160],
  ],
  'building-quarter': [
    [2, 21],
    [3, 42],
    [4, 216],
  ],
  'building-eighth': [
    [3, 36],
    [4, 180],
  ],
};

const branch = 'IPC 710.1, quoted on question pages: horizontal branch';

export const branchUnitsRecord: FormulaRecord<BranchInputs> = {
  id: 'branch-units',
  title: 'Fixture units of a drain',
  formula: 'a value for each nominal size',
  inputs: {
    sizeM: { text: 'Nominal size', unit: 'm', min: inches(2), max: inches(4) },
    kind: { text: 'Branch, or building drain by its fall', choices: DRAIN_KINDS },
  },
  result: { text: 'Drainage fixture units', unit: 'count', min: 0, max: 216 },
  also,
  source: [
    { text: `${branch}`, documents: ['ipc'], confidence: 'secondary' },
    { text: 'IPC 710.1(1), building drain', documents: ['ipc'], confidence: 'memory' },
  ],
  examples: [
    { kind: 'source', from: `${branch} of 2 in`, inputs: { sizeM: inches(2), kind: 'branch' }, result: 6, tolerance: 0 },
    { kind: 'source', from: `${branch} of 3 in`, inputs: { sizeM: inches(3), kind: 'branch' }, result: 20, tolerance: 0 },
    { kind: 'source', from: `${branch} of 4 in`, inputs: { sizeM: inches(4), kind: 'branch' }, result: 160, tolerance: 0 },
    {
      kind: 'memory',
      from: 'IPC 710.1(1), 3 in at ¼ in/ft',
      inputs: { sizeM: inches(3), kind: 'building-quarter' },
      result: 42,
      tolerance: 0,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1100, formulas: [formula(branchUnitsRecord, branchUnits)] }];
