import {
  createRefusal,
  type Entries,
  type FormulaSource,
  feet,
  inches,
  judge,
  type Limit,
  limit,
  type RuleRecord,
  type Ruling,
  ruling,
} from '../../../rules';
import { isAtMost } from '../../../units';

const chicago: FormulaSource = { text: 'Chicago plumbing code, 0-0-0-2692350', documents: ['chicago-plumbing'], confidence: 'read' };
const direct: FormulaSource = {
  text: 'FDA Food Code 5-402.11 as South Carolina 61-25, 5-402.11(C)',
  documents: ['fda-food-code'],
  confidence: 'read',
};

/** How far from a trapped floor drain a dish machine may be and still connect to it without an air gap. */
export const DIRECT_DRAIN_DISTANCE: Limit = limit(
  'direct-drain-distance',
  'Distance to a trapped floor drain for a direct connection',
  'm',
  { max: feet(5) },
  direct,
);
export const INDIRECT_WASTE_LENGTH: Limit = limit(
  'indirect-waste-length',
  'Length of an indirect waste pipe',
  'm',
  { max: feet(15) },
  chicago,
);
export const WARE_SINK_DRAIN_DISTANCE: Limit = limit(
  'ware-sink-drain-distance',
  'Distance to a floor drain for a ware sink without an air gap',
  'm',
  { max: feet(4) },
  chicago,
);

/** An indirect waste pipe that is longer has a trap of its own. */
export const UNTRAPPED_WASTE_LEVEL: Limit = limit(
  'untrapped-waste-level',
  'Length on the level of an indirect waste pipe without a trap',
  'm',
  { max: inches(30) },
  chicago,
);
export const UNTRAPPED_WASTE_LENGTH: Limit = limit(
  'untrapped-waste-length',
  'Length of an indirect waste pipe without a trap, drop included',
  'm',
  { max: inches(54) },
  chicago,
);

export const directDrainRule: RuleRecord = {
  id: 'direct-drain',
  title: 'Direct connection of a dish machine',
  rule: 'Where law allows it, a machine may connect directly to a floor drain that is trapped, within 5 ft, on the inlet side of a vented trap.',
  source: [direct],
};

/** The way from the machine's outlet to a drain, and what the drain has. */
export interface DirectDrainCase {
  distanceM: number;
  trapped: boolean;
  vented: boolean;
}

/** Whether a direct connection may be made; else the waste is indirect, through an air gap. Local law may forbid it anyway. */
export function judgeDirectDrain({ distanceM, trapped, vented }: DirectDrainCase): Ruling {
  if (!isAtMost(distanceM, feet(5))) return ruling(createRefusal(directDrainRule, 'drain-too-far', {}));
  if (!trapped) return ruling(createRefusal(directDrainRule, 'drain-without-trap', {}));
  return ruling(vented ? null : createRefusal(directDrainRule, 'trap-not-vented', {}));
}

export const indirectTrapRule: RuleRecord = {
  id: 'indirect-waste-trap',
  title: 'Trap of an indirect waste pipe',
  rule: 'An indirect waste pipe of more than 30 in on the level or 54 in in all has a trap; it is at most 15 ft long.',
  source: [chicago],
};

/** Whether an indirect waste pipe without a trap of its own is short enough. */
export function judgeUntrappedWaste(levelM: number, totalM: number): Ruling {
  if (judge(UNTRAPPED_WASTE_LEVEL, levelM) !== 'pass') return ruling(createRefusal(indirectTrapRule, 'level-waste-too-long', {}));
  return ruling(judge(UNTRAPPED_WASTE_LENGTH, totalM) === 'pass' ? null : createRefusal(indirectTrapRule, 'waste-too-long', {}));
}

/** What the manual shows of this file. */
export const entries: Entries = [
  {
    order: 480,
    limits: [DIRECT_DRAIN_DISTANCE, INDIRECT_WASTE_LENGTH, UNTRAPPED_WASTE_LEVEL, UNTRAPPED_WASTE_LENGTH, WARE_SINK_DRAIN_DISTANCE],
  },
  { order: 50, rules: [directDrainRule, indirectTrapRule] },
];
