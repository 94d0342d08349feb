import { createRefusal, type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';
import { isAtMost, toSI } from '../../../units';

/**
 * How a flow counts as drainage fixture units. Codes disagree by two; `ipc` and `upc` count the most.
 * `cubic-foot` is the original definition, 7.5 gpm a unit; `upc-intermittent` holds only for flows that come and go.
 */
export const FIXTURE_UNIT_RULES = ['ipc', 'upc', 'chicago', 'upc-intermittent', 'cubic-foot'] as const;
export type FixtureUnitRule = (typeof FIXTURE_UNIT_RULES)[number];

export interface FixtureUnitInputs {
  flowM3S: number;
  rule: FixtureUnitRule;
}

/** Drainage fixture units of a flow into the drain. */
export function fixtureUnitsOfFlow(inputs: FixtureUnitInputs): FormulaResult {
  const refusal = findOutOfRange(fixtureUnitsOfFlowRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  const { flowM3S, rule } = inputs;
  return rule === 'upc-intermittent' ? intermittentUnits(flowM3S) : { ok: true, value: (flowM3S / toSI(1, 'gpm')) * UNITS_PER_GPM[rule] };
}

const UNITS_PER_GPM = { ipc: 2, upc: 2, chicago: 1, 'cubic-foot': 1 / 7.5 } as const;

function intermittentUnits(flowM3S: number): FormulaResult {
  if (isAtMost(flowM3S, toSI(7.5, 'gpm'))) return { ok: true, value: 1 };
  if (isAtMost(flowM3S, toSI(15, 'gpm'))) return { ok: true, value: 2 };
  const about = { input: 'flowM3S', value: flowM3S };
  return { ok: false, refusal: createRefusal(fixtureUnitsOfFlowRecord, 'flow-not-held', {}, about) };
}

const also = 'intermittent flows are held up to 15 gpm; above, the code itself';

const chicago = 'Chicago Plumbing Code 18-29-709.3: 1 gpm is 1 DFU';
const ipc = 'IPC 709.3, as a how-to page turns it: DFU / 2 is gpm';
const at = (gpm: number, rule: FixtureUnitRule): FixtureUnitInputs => ({ flowM3S: toSI(gpm, 'gpm'), rule });

export const fixtureUnitsOfFlowRecord: FormulaRecord<FixtureUnitInputs> = {
  id: 'fixture-units-of-flow',
  title: 'Fixture units of a flow',
  formula: 'DFU = gpm · 2 (IPC, UPC), · 1 (Chicago), / 7.5 (first definition)',
  inputs: {
    flowM3S: { text: 'Flow into the drain', unit: 'm3/s', min: 0, max: 0.01 },
    rule: { text: 'Which code counts', choices: FIXTURE_UNIT_RULES },
  },
  result: { text: 'Drainage fixture units', unit: 'count', min: 0, max: 320 },
  also,
  source: [
    { text: `${chicago}, amended 2022`, documents: ['chicago-plumbing'], confidence: 'read' },
    { text: `${ipc}`, documents: ['ipc'], confidence: 'secondary' },
    { text: 'UPC 702.3 and Table 702.2(2)', documents: ['upc'], confidence: 'memory' },
    { text: 'Redwood City code: 7.5 gpm a unit', documents: ['redwood-city'], confidence: 'read' },
  ],
  examples: [
    { kind: 'source', from: chicago, inputs: at(20, 'chicago'), result: 20, tolerance: 1e-9 },
    { kind: 'source', from: ipc, inputs: at(20, 'ipc'), result: 40, tolerance: 1e-9 },
    { kind: 'source', from: 'Redwood City code', inputs: at(7.5, 'cubic-foot'), result: 1, tolerance: 1e-9 },
    { kind: 'memory', from: 'UPC Table 702.2(2): 8 to 15 gpm', inputs: at(8, 'upc-intermittent'), result: 2, tolerance: 0 },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 1080, formulas: [formula(fixtureUnitsOfFlowRecord, fixtureUnitsOfFlow)] }];
