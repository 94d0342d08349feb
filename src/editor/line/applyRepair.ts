import type { Plan } from '../../plan';
import type { Finding, Repair } from '../../rules';
import { repairWords } from '../../text';
import { formatterFor } from '../../units';
import { type CommandResult, carryOut } from './commandResult';

/** Carries out the repair of a finding as one change that can be undone, and chooses what it was about. */
export function applyRepair(plan: Plan, finding: Finding, repair: Repair): CommandResult {
  const label = repairWords(repair, formatterFor(plan.settings.units));
  return carryOut(plan, label, repair.edit, finding.subjects.slice(0, 1));
}
