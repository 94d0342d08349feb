import { CHECK_GROUPS } from '../rules';
import { CHECKS, FIGURES, FORMULAS, groupOf, LIMITS, RULES } from '../topics/registry';
import type { Formatter } from '../units';
import { createCheckEntry } from './entries/checkEntry';
import { createFigureEntry } from './entries/figureEntry';
import { createFormulaEntry } from './entries/formulaEntry';
import { createLimitEntry, createRuleEntry } from './entries/limitEntries';
import { createSourceEntries } from './entries/sourceEntries';
import { deriveSamples } from './sampleLines';
import type { ManualEntry } from './types';

/**
 * The manual: an entry for every check, figure, formula, limit, rule and source, made of what the registries say of themselves, so that it
 * can't drift from what the program does. In the units of `f`.
 */
export function createManual(f: Formatter): ManualEntry[] {
  const { findings, formulasOf } = deriveSamples();
  const usedBy = (formula: string) =>
    [...formulasOf].flatMap(([figure, formulas]) => (formulas.includes(formula) ? [`figure/${figure}`] : []));
  const checks = CHECKS.map((check) =>
    createCheckEntry(
      check,
      findings.filter((found) => found.check === check.id),
      f,
    ),
  );
  return [
    ...CHECK_GROUPS.flatMap((group) => checks.filter((entry) => entry.group === group)),
    ...FIGURES.map((rule) => createFigureEntry(rule, formulasOf.get(rule.id) ?? [], f)),
    ...FORMULAS.map((formula) => createFormulaEntry(formula, groupOf(formula), usedBy(formula.record.id), f)),
    ...LIMITS.map((limit) => createLimitEntry(limit, groupOf(limit), f)),
    ...RULES.map((rule) => createRuleEntry(rule, groupOf(rule))),
    ...createSourceEntries(),
  ];
}
