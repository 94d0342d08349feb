import { createPen, LETTER, numberFindings, type Prim, VERDICT_NAMES, VERDICT_SHAPES, verdictInk, wrapText } from '../../drawing';
import { type Finding, VERDICTS, type Verdict } from '../../rules';
import { findingWords } from '../../text';
import type { Formatter } from '../../units';
import { type Block, drawHeading, HEADING_HEIGHT, LINE_HEIGHT } from '../block';

/** What the checks said, and whether some of them were not made. */
export interface Checked {
  findings: readonly Finding[];
  isPartlyChecked: boolean;
}

const NOT_CHECKED = 'Not all checks were made. Nothing is said of air, water, heat, drain, power and people.';

/** What the checks say: how many of each verdict, then the worst in words with the numbers that they bear on the plan. At most `maxHeight` high. */
export function createFindingsBlock({ findings, isPartlyChecked }: Checked, f: Formatter, width: number, maxHeight: number): Block {
  const open = findings.filter(({ verdict }) => verdict !== 'clear');
  const numbers = numberFindings(findings);
  const gaps = isPartlyChecked ? [layWords(NOT_CHECKED, width)] : [];
  const found = open.map((finding) => layRow(finding, String(numbers.get(finding.id) ?? ''), f, width));
  const rows = [...gaps, ...found];
  const room = maxHeight - HEADING_HEIGHT - 2 * LINE_HEIGHT - 1;
  let used = 0;
  const shown = rows.filter((row) => {
    used += row.height;
    return used <= room;
  });
  const left = rows.length - shown.length;
  const height = HEADING_HEIGHT + LINE_HEIGHT + 1 + shown.reduce((sum, row) => sum + row.height, 0) + (left > 0 ? LINE_HEIGHT : 0);
  return {
    height,
    draw: (x, y) => {
      let top = y + HEADING_HEIGHT + LINE_HEIGHT + 1;
      const drawn = shown.flatMap((row) => {
        const prims = row.draw(x, top);
        top += row.height;
        return prims;
      });
      const more = left > 0 ? [createPen('notes').text({ x, y: top + 3 }, `and ${left} more`, LETTER.text, { hue: 'second' })] : [];
      return [...drawHeading('Findings', x, y, width), ...drawCounts(findings, x, y + HEADING_HEIGHT), ...drawn, ...more];
    },
  };
}

/** A mark and a count for each verdict, all of them, so that none can be missed. */
function drawCounts(findings: readonly Finding[], x: number, y: number): Prim[] {
  const pen = createPen('notes');
  return VERDICTS.flatMap((verdict: Verdict, i) => {
    const count = findings.filter((finding) => finding.verdict === verdict).length;
    const at = { x: x + 2 + i * 20, y: y + 1.9 };
    return [
      pen.symbol(at, VERDICT_SHAPES[verdict], 3, verdictInk(verdict)),
      pen.text({ x: at.x + 2.6, y: at.y }, `${count} ${VERDICT_NAMES[verdict]}`, LETTER.text, {
        baseline: 'middle',
        weight: 'semibold',
        hue: verdict,
      }),
    ];
  });
}

const TEXT_X = 10;

/** A sentence over the whole width. */
function layWords(text: string, width: number): Block {
  const lines = wrapText(text, { size: LETTER.text, width, maxLines: 4 });
  return {
    height: lines.length * LINE_HEIGHT + 1,
    draw: (x, y) =>
      lines.map((line, i) => createPen('notes').text({ x, y: y + 3 + i * LINE_HEIGHT }, line, LETTER.text, { weight: 'semibold' })),
  };
}

function layRow(finding: Finding, number: string, f: Formatter, width: number): Block {
  const lines = wrapText(findingWords(finding, f), { size: LETTER.text, width: width - TEXT_X, maxLines: 3 });
  return {
    height: lines.length * LINE_HEIGHT + 1,
    draw: (x, y) => {
      const pen = createPen('notes', finding.subjects[0]);
      return [
        pen.symbol({ x: x + 2, y: y + 2 }, VERDICT_SHAPES[finding.verdict], 3, verdictInk(finding.verdict)),
        ...(number === ''
          ? []
          : [pen.text({ x: x + 4.4, y: y + 2 }, number, LETTER.text, { baseline: 'middle', weight: 'semibold', hue: finding.verdict })]),
        ...lines.map((line, i) => pen.text({ x: x + TEXT_X, y: y + 3 + i * LINE_HEIGHT }, line, LETTER.text)),
      ];
    },
  };
}
