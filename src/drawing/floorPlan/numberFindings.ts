import { type Finding, VERDICTS } from '../../rules';

/**
 * Whether a finding bears a mark on the plan: what is wrong does. Open questions are many while little is known, and would hide
 * the plan: they stand in the list, and the chosen one is marked.
 */
export const isMarked = ({ verdict }: Finding): boolean => verdict === 'stop' || verdict === 'watch';

/** The numbers that findings bear on the plan and in the list, by their ids: of those that are marked, worst first. */
export function numberFindings(findings: readonly Finding[]): ReadonlyMap<string, number> {
  const marked = VERDICTS.flatMap((verdict) => findings.filter((finding) => finding.verdict === verdict && isMarked(finding)));
  return new Map(marked.map(({ id }, index) => [id, index + 1]));
}
