import { CHECK_GROUPS, type CheckGroup, type Finding } from '../../rules';

/** One input that is missing, and every finding that waits for it. */
export interface Question {
  key: string;
  /** null: the check can't say, and no single input would change that. */
  ask: Finding['ask'];
  findings: Finding[];
}

export interface QuestionGroup {
  group: CheckGroup;
  questions: Question[];
}

/** Open questions by group. An input that several checks wait for is asked once, in the first of their groups. */
export function deriveQuestions(findings: readonly Finding[]): QuestionGroup[] {
  const known = new Map<string, Question>();
  const groups = CHECK_GROUPS.map((group) => ({ group, questions: collect(findings, group, known) }));
  return groups.filter(({ questions }) => questions.length > 0);
}

/** The questions that a group is the first to ask; findings that wait for an earlier one are added to it. */
function collect(findings: readonly Finding[], group: CheckGroup, known: Map<string, Question>): Question[] {
  const fresh: Question[] = [];
  for (const finding of findings) {
    if (finding.verdict !== 'ask' || finding.group !== group) continue;
    const key = finding.ask ? finding.ask.path.join('.') : finding.id;
    const asked = known.get(key);
    if (asked) asked.findings.push(finding);
    else {
      const question = { key, ask: finding.ask, findings: [finding] };
      known.set(key, question);
      fresh.push(question);
    }
  }
  return fresh;
}
