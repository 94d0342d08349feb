import { type Entries, type FormulaRecord, type FormulaResult, findOutOfRange, formula } from '../../../rules';

export interface RacksNeededInputs {
  guestsPerH: number;
  piecesPerGuest: number;
  piecesPerRack: number;
  /** Part of its rated rate that a machine keeps in practice; 1 gives the racks themselves. */
  practicalShare: number;
}

/** Rated racks an hour that a machine needs to follow so many guests. The three habits in it are inputs, never constants. */
export function racksNeeded(inputs: RacksNeededInputs): FormulaResult {
  const refusal = findOutOfRange(racksNeededRecord, inputs);
  if (refusal !== null) return { ok: false, refusal };
  return { ok: true, value: (inputs.guestsPerH * inputs.piecesPerGuest) / inputs.piecesPerRack / inputs.practicalShare };
}

export const racksNeededRecord: FormulaRecord<RacksNeededInputs> = {
  id: 'racks-needed',
  title: 'Racks an hour needed',
  formula: 'RPH = guests · pieces / pieces a rack / practical share',
  inputs: {
    guestsPerH: { text: 'Guests an hour whose ware comes back', unit: '1/h', min: 0, max: 20_000 },
    piecesPerGuest: { text: 'Pieces for each: full service 6 to 8, cafeteria 5 to 7', unit: 'count', min: 0.5, max: 30 },
    piecesPerRack: { text: 'Pieces in a rack, about 20 mixed', unit: 'count', min: 1, max: 150 },
    practicalShare: { text: 'Part of the rated rate kept in practice, 0.70 to 0.80', unit: 'share', min: 0.3, max: 1 },
  },
  result: { text: 'Rated racks an hour', unit: '1/h', min: 0, max: 2e6 },
  source: [
    { text: 'Pieces and practical share from food-service layout texts', documents: ['food-service-layout'], confidence: 'memory' },
    { text: 'UFC 4-740-12AN, 3-2.3: a cafeteria line passes 10 persons a minute', documents: ['ufc-4-740-12an'], confidence: 'read' },
  ],
  unprinted: 'No agency or textbook page with a whole rack load is at hand.',
  examples: [
    {
      kind: 'memory',
      from: '120 guests, 6 pieces, 20 a rack, 0.70: 51.43 racks/h',
      inputs: { guestsPerH: 120, piecesPerGuest: 6, piecesPerRack: 20, practicalShare: 0.7 },
      result: 51.43,
      tolerance: 0.01,
    },
    {
      kind: 'memory',
      from: 'a cafeteria line of 600 an hour: 180 racks/h',
      inputs: { guestsPerH: 600, piecesPerGuest: 6, piecesPerRack: 20, practicalShare: 1 },
      result: 180,
      tolerance: 1e-9,
    },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 680, formulas: [formula(racksNeededRecord, racksNeeded)] }];
