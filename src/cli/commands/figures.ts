import type { Plan } from '../../plan';
import { deriveFigures, type Figure } from '../../rules';
import { deriveScene, type Scene } from '../../scene';
import { FIGURES } from '../../topics/registry';
import { CLEAR, type Command, UNREADABLE, UsageError } from '../command';
import { createFiguresReport, FIGURES_FORMAT, FIGURES_VERSION, type FiguresReport } from '../figuresFormat';
import { parseOptions, parseUnits } from '../parseOptions';
import { readPlan } from '../readPlan';
import { renderFigures } from '../renderFigures';

interface Computed {
  file: string;
  plan: Plan;
  scene: Scene;
  figures: Figure[];
}

/** `figures FILE... [--json] [--units us|metric]`: what can be computed. A file that can't be read does not stop the others. */
export const figures: Command = async (args, { out, error, columns }) => {
  const { files, text, flags } = parseOptions(args, { json: 'flag', units: 'text' });
  const units = parseUnits(text.units);
  if (files.length === 0) throw new UsageError('figures needs a plan file');
  const computed: Computed[] = [];
  for (const file of files) {
    const read = await readPlan(file);
    if (read.ok) computed.push(computeFile(file, read.plan));
    else error(`rackway: ${read.reason}\n`);
  }
  if (flags.json === true) out(`${JSON.stringify(createReport(computed), null, 2)}\n`);
  else
    out(computed.map((item) => renderFigures(item.file, item.scene, item.figures, units ?? item.plan.settings.units, columns)).join('\n'));
  return computed.length < files.length ? UNREADABLE : CLEAR;
};

function computeFile(file: string, plan: Plan): Computed {
  const scene = deriveScene(plan);
  return { file, plan, scene, figures: deriveFigures(scene, FIGURES) };
}

const createReport = (computed: readonly Computed[]): FiguresReport => ({
  format: FIGURES_FORMAT,
  version: FIGURES_VERSION,
  files: computed.map((item) => createFiguresReport(item.file, item.plan, item.figures)),
});
