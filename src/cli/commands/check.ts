import type { Plan } from '../../plan';
import { type Finding, runChecks } from '../../rules';
import { deriveScene, type Scene } from '../../scene';
import { CHECKS } from '../../topics/registry';
import { CLEAR, type Command, FOUND, UNREADABLE, UsageError } from '../command';
import { createFileReport, FINDINGS_FORMAT, FINDINGS_VERSION, type FindingsReport } from '../jsonFormat';
import { parseOptions, parseUnits } from '../parseOptions';
import { readPlan } from '../readPlan';
import { renderFindings } from '../renderFindings';

interface Checked {
  file: string;
  scene: Scene;
  findings: Finding[];
}

/** `check FILE... [--json] [--units us|metric]`: what the checks find. A file that can't be read does not stop the others. */
export const check: Command = async (args, { out, error, columns }) => {
  const { files, text, flags } = parseOptions(args, { json: 'flag', units: 'text' });
  const units = parseUnits(text.units);
  if (files.length === 0) throw new UsageError('check needs a plan file');
  const checked: Checked[] = [];
  for (const file of files) {
    const read = await readPlan(file);
    if (read.ok) checked.push(checkPlan(file, read.plan));
    else error(`rackway: ${read.reason}\n`);
  }
  const unitsOf = ({ scene }: Checked) => units ?? scene.plan.settings.units;
  if (flags.json === true) out(`${JSON.stringify(createReport(checked, unitsOf), null, 2)}\n`);
  else out(checked.map((item) => renderFindings(item.file, item.scene, item.findings, unitsOf(item), columns)).join('\n'));
  if (checked.length < files.length) return UNREADABLE;
  return checked.every(({ findings }) => findings.every(({ verdict }) => verdict === 'clear')) ? CLEAR : FOUND;
};

function checkPlan(file: string, plan: Plan): Checked {
  const scene = deriveScene(plan);
  return { file, scene, findings: runChecks(scene, CHECKS) };
}

const createReport = (checked: readonly Checked[], unitsOf: (item: Checked) => 'us' | 'metric'): FindingsReport => ({
  format: FINDINGS_FORMAT,
  version: FINDINGS_VERSION,
  files: checked.map((item) => createFileReport(item.file, item.scene, item.findings, unitsOf(item))),
});
