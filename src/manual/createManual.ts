import { CHECK_GROUPS } from '../checks';
import {
  AIR_LIMITS,
  CAPACITY_FORMULAS,
  DRAIN_FORMULAS,
  DRAIN_LIMITS,
  DRAIN_RULES,
  FORMULAS,
  HEAT_FORMULAS,
  HEAT_LIMITS,
  LIMITS,
  PEOPLE_FORMULAS,
  PEOPLE_LIMITS,
  PEOPLE_RULES,
  POWER_FORMULAS,
  POWER_LIMITS,
  POWER_RULES,
  RULES,
  WATER_FORMULAS,
  WATER_LIMITS,
  WATER_RULES,
} from '../engineering';
import { FIGURES } from '../figures';
import { ALL_CHECKS } from '../services';
import type { Formatter } from '../units';
import { createCheckEntry } from './entries/checkEntry';
import { createFigureEntry } from './entries/figureEntry';
import { createFormulaEntry } from './entries/formulaEntry';
import { createLimitEntry, createRuleEntry } from './entries/limitEntries';
import { deriveSamples } from './sampleLines';
import type { ManualEntry } from './types';

/**
 * The manual: an entry for every check, figure, formula, limit and rule, made of what the registries say of themselves, so that it
 * can't drift from what the program does. In the units of `f`.
 */
export function createManual(f: Formatter): ManualEntry[] {
  const { findings, formulasOf } = deriveSamples();
  const usedBy = (formula: string) =>
    [...formulasOf].flatMap(([figure, formulas]) => (formulas.includes(formula) ? [`figure/${figure}`] : []));
  const checks = ALL_CHECKS.map((check) =>
    createCheckEntry(
      check,
      findings.filter((found) => found.check === check.id),
      f,
    ),
  );
  return [
    ...CHECK_GROUPS.flatMap((group) => checks.filter((entry) => entry.group === group)),
    ...FIGURES.map((rule) => createFigureEntry(rule, formulasOf.get(rule.id) ?? [], f)),
    ...FORMULAS.map((formula) => createFormulaEntry(formula, groupOf(formula, FORMULA_GROUPS), usedBy(formula.record.id), f)),
    ...LIMITS.map((limit) => createLimitEntry(limit, groupOf(limit, LIMIT_GROUPS), f)),
    ...RULES.map((rule) => createRuleEntry(rule, groupOf(rule, RULE_GROUPS))),
  ];
}

const FORMULA_GROUPS = {
  capacity: CAPACITY_FORMULAS,
  water: WATER_FORMULAS,
  heat: HEAT_FORMULAS,
  drain: DRAIN_FORMULAS,
  power: POWER_FORMULAS,
  people: PEOPLE_FORMULAS,
};
const LIMIT_GROUPS = {
  air: AIR_LIMITS,
  water: WATER_LIMITS,
  heat: HEAT_LIMITS,
  drain: DRAIN_LIMITS,
  power: POWER_LIMITS,
  people: PEOPLE_LIMITS,
};
const RULE_GROUPS = { water: WATER_RULES, drain: DRAIN_RULES, power: POWER_RULES, people: PEOPLE_RULES };

/** The list that an item stands in; what stands in none is of the run and its room, and so of air. */
function groupOf<T>(item: T, groups: Readonly<Record<string, readonly T[]>>): string {
  return Object.keys(groups).find((name) => groups[name]?.includes(item)) ?? 'air';
}
