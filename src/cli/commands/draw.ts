import type { Plan } from '../../plan';
import { runChecks } from '../../rules';
import { deriveScene } from '../../scene';
import { drawPlanSheet, findPaper, PAPERS, type PaperName, parseScale, type SheetOptions, scaleWords } from '../../sheets';
import { CHECKS } from '../../topics/registry';
import type { Units } from '../../units';
import { CLEAR, type Command, UNREADABLE, UsageError } from '../command';
import { parseOptions, parseUnits } from '../parseOptions';
import { readPlan } from '../readPlan';
import { writeSheet } from '../writeSheet';

/** `draw FILE --out PLAN.svg|PLAN.png [--paper A3] [--scale 1:50] [--units us|metric]`: the dimensioned plan, true to scale. */
export const draw: Command = async (args, { error }) => {
  const { files, text } = parseOptions(args, { out: 'text', paper: 'text', scale: 'text', units: 'text' });
  const [file] = files;
  if (file === undefined || files.length > 1) throw new UsageError('draw needs one plan file');
  if (text.out === undefined || !/\.(svg|png)$/i.test(text.out))
    throw new UsageError('draw needs --out with a name that ends in .svg or .png');
  const asked = { units: parseUnits(text.units), scale: readScale(text.scale), paper: readPaper(text.paper) };
  const read = await readPlan(file);
  const problem = read.ok ? await drawPlanTo(text.out, read.plan, asked) : read.reason;
  if (problem !== null) error(`rackway: ${problem}\n`);
  return problem === null ? CLEAR : UNREADABLE;
};

const USUAL_PAPER: Record<Units, PaperName> = { us: 'ansi-b', metric: 'a3' };

/** Why it could not be drawn; null when it was. */
async function drawPlanTo(
  out: string,
  plan: Plan,
  asked: { units?: Units | undefined; scale: SheetOptions['scale']; paper: PaperName | null },
): Promise<string | null> {
  const units = asked.units ?? plan.settings.units;
  const paper = asked.paper ?? USUAL_PAPER[units];
  const scene = deriveScene(plan);
  const sheet = drawPlanSheet(scene, runChecks(scene, CHECKS), { paper, scale: asked.scale, units });
  if (asked.scale === 'fit' || asked.scale === sheet.scaleDenominator) return writeSheet(sheet, out);
  return `the plan does not fit ${PAPERS[paper].name} at ${scaleWords(asked.scale, units)}; it does at ${sheet.scaleText}`;
}

function readScale(text: string | undefined): SheetOptions['scale'] {
  if (text === undefined || text === 'fit') return 'fit';
  const scale = parseScale(text);
  if (scale === null) throw new UsageError(`--scale is a reduction such as 1:50, not '${text}'`);
  return scale;
}

function readPaper(text: string | undefined): PaperName | null {
  const paper = text === undefined ? null : findPaper(text);
  if (text !== undefined && paper === null) throw new UsageError(`--paper is one of ${Object.keys(PAPERS).join(', ')}, not '${text}'`);
  return paper;
}
