import type { CommandResult } from '../../src/editor';
import { edit, type Plan, removeItems, type Table } from '../../src/plan';

/** The plan after a command, with what it is called and chooses. */
export function done(outcome: CommandResult): { plan: Plan; label: string; select: readonly string[] | undefined } {
  if (!outcome.ok) throw new Error(outcome.problem);
  return { plan: outcome.transaction.plan, label: outcome.transaction.label, select: outcome.select };
}

/** Why a command was refused. */
export const refused = (outcome: CommandResult): string => (outcome.ok ? 'carried out' : outcome.problem);

export const without = (plan: Plan, ...ids: string[]): Plan => edit(plan, 'without', removeItems(ids)).plan;

/** Each fitting of a table with its ends along it. */
export const spans = ({ fittings }: Table): [string, number, number][] =>
  fittings.map(({ id, at: middle, length }) => [id, middle - length / 2, middle + length / 2]);
