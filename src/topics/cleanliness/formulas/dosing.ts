import { createRefusal, type Entries, type RuleRecord, type Ruling, ruling } from '../../../rules';

export const dosingRule: RuleRecord = {
  id: 'chemicals-dosed',
  title: 'Detergent and sanitiser are dosed by the machine',
  rule: 'A machine gives detergent and sanitiser by itself, and lets it be seen, or sounds an alarm, when they do not come.',
  source: [{ text: 'FDA Food Code 4-204.117 as WAC 246-215-04258', documents: ['fda-food-code', 'wac-246-215'], confidence: 'read' }],
};

export interface Dosing {
  automatic: boolean;
  /** Delivery can be seen. */
  seen: boolean;
  alarm: boolean;
}

/** Whether detergent or sanitiser is dosed as the rule asks. */
export function judgeDosing({ automatic, seen, alarm }: Dosing): Ruling {
  if (!automatic) return ruling(createRefusal(dosingRule, 'dosing-not-automatic', {}));
  return ruling(seen || alarm ? null : createRefusal(dosingRule, 'dosing-unnoticed', {}));
}

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 150, group: 'air', rules: [dosingRule] }];
