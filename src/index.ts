/**
 * The core without a screen: read a plan, derive its scene, check it, compute its figures, draw it. All that comes out is plain data
 * (but a repair, whose `edit` changes a plan): it survives `structuredClone` and `JSON.stringify`, so that a script, a worker and a
 * page take the same. Lengths in mm, slopes as ratios, all else in SI with temperatures in °C.
 */
import { renderSvg } from './render';
import { deriveFigures, type Figure, type Finding, findRepairs, type Repair, runChecks } from './rules';
import type { Scene } from './scene';
import { drawPlanSheet, type SheetOptions } from './sheets';
import { loadEnglish } from './text';
import { CHECKS, FIGURES } from './topics/registry';

await loadEnglish();

export { describeProblem, edit, type Plan, type PlanProblem, parsePlan, type ReadResult, renderPlanText } from './plan';
export type { Ask, Figure, Finding, Message, Repair, Verdict } from './rules';
export { deriveScene, type Scene } from './scene';
export type { SheetOptions } from './sheets';
export { askWords, findingWords, notesWords, repairWords } from './text';
export { type Formatter, formatterFor, type Units } from './units';

/** Every finding of every check, the worst first. */
export const check = (scene: Scene): Finding[] => runChecks(scene, CHECKS);

/** Every figure that has a meaning for the plan: its value in SI, or what is missing, or why the formula does not hold. */
export const figures = (scene: Scene): Figure[] => deriveFigures(scene, FIGURES);

/** The repairs that would better a finding, by its id; each is an edit of the plan. To find them takes longer than the finding did. */
export const repairsFor = (scene: Scene, findingId: string): Repair[] => findRepairs(scene, CHECKS, findingId);

/** The dimensioned plan with its findings, true to scale, as SVG. */
export const draw = (scene: Scene, options: SheetOptions): string => renderSvg(drawPlanSheet(scene, check(scene), options));
