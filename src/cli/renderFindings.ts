import { measureWords, RELATION_WORDS, sourceWords } from '../drawing';
import { deriveWorstVerdict, type Finding, type Verdict } from '../rules';
import type { Scene } from '../scene';
import { askWords, findingWords, repairWords } from '../text';
import { type Formatter, formatterFor, type Units } from '../units';
import { planTitle, repairsOf } from './jsonFormat';
import { wrapText } from './wrapText';

const MARKS: Record<Verdict, string> = { stop: '■', watch: '▲', ask: '?', clear: '✓' };
/** Width of the column of marks and words: `■ stop   `. */
const INDENT = 9;

/** The findings of one plan for people: worst first, those that hold folded into one line. `width`: letters a line. */
export function renderFindings(file: string, scene: Scene, findings: readonly Finding[], units: Units, width: number): string {
  const f = formatterFor(units);
  const title = planTitle(scene.plan);
  const open = findings.filter(({ verdict }) => verdict !== 'clear');
  const clear = findings.length - open.length;
  const worst = deriveWorstVerdict(findings);
  const head = `${file}${title === '' ? '' : `  (${title})`}`;
  return [
    head,
    ...open.flatMap((finding) => ['', ...renderFinding(scene, finding, f, width)]),
    '',
    label('clear') + `${clear} ${clear === 1 ? 'check holds' : 'checks hold'}`,
    `The plan as a whole: ${worst}.`,
    '',
  ].join('\n');
}

function renderFinding(scene: Scene, finding: Finding, f: Formatter, width: number): string[] {
  const room = Math.max(40, width - INDENT);
  const lines = [
    finding.title,
    ...wrapText(findingWords(finding, f), room),
    ...wrapText(figures(finding, f), room),
    ...repairs(scene, finding, f).flatMap((line) => wrapText(line, room)),
  ];
  return lines.map((line, i) => (i === 0 ? label(finding.verdict) : ' '.repeat(INDENT)) + line);
}

const label = (verdict: Verdict) => `${MARKS[verdict]} ${verdict}`.padEnd(INDENT);

/** What was measured beside its limit, and where the limit comes from. */
function figures(finding: Finding, f: Formatter): string {
  const { measured, unit, relation, source, ask, group } = finding;
  const from = sourceWords(source);
  if (measured === null) return ask === null ? from : `Missing: ${askWords(ask, f)}. ${from}`;
  const to = relation === 'equals' ? '' : `${RELATION_WORDS[relation]} `;
  const limit = brokenLimit(finding);
  const bound = limit === null ? '' : `, to be ${to}${measureWords(limit, unit, f, group)}`;
  return `Measured ${measureWords(measured, unit, f, group)}${bound}. ${from}`;
}

/** The limit that is spoken of: a watch may keep the limit and break the stricter one. */
const brokenLimit = ({ verdict, limit, watchLimit, margin }: Finding) =>
  verdict === 'watch' && watchLimit !== null && margin !== null && margin >= 0 ? watchLimit : limit;

const repairs = (scene: Scene, finding: Finding, f: Formatter) =>
  repairsOf(scene, finding).map((repair) => `Repair: ${repairWords(repair, f)}.`);
