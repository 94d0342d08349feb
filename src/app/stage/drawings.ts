import { type Drawing, drawDimensions, drawFindings, drawPlan, type PlanOptions } from '../../drawing';
import { drawOverlay, shownPlan } from '../../editor';
import type { Plan } from '../../plan';
import { deriveScene } from '../../scene';
import { rememberLast } from '../parts/rememberLast';
import type { AppState } from '../store/store';
import { deriveMotionWork, deriveWork, type Work } from '../store/work';
import { divideDrawing } from './divideDrawing';
import { deriveDenominator } from './screenScale';

/** The plan with its dimensions and the marks of its findings; while something is dragged, what of it stands still. */
export const deriveStillDrawing = (state: AppState): Drawing => deriveParts(state).still;

/** What moves while something is dragged; nothing otherwise. */
export const deriveMovingDrawing = (state: AppState): Drawing => deriveParts(state).moving;

/** What is chosen, its handles, guides and live dimensions. */
export function deriveOverlayDrawing(state: AppState): Drawing {
  return composeOverlay(state.editor, deriveScene(shownPlan(state.editor)));
}

function deriveParts({ editor, finding }: AppState): { still: Drawing; moving: Drawing } {
  const { present } = editor.history;
  const plan = shownPlan(editor);
  const scaleDenominator = deriveDenominator(editor.view.scale);
  if (plan === present) return { still: composePlan(deriveWork(plan), scaleDenominator, finding), moving: NOTHING };
  return composeMotion(deriveWork(present), plan, scaleDenominator, finding);
}

const NOTHING: Drawing = [];

const composePlan = rememberLast((work: Work, scaleDenominator: number, chosen: string | null): Drawing => {
  const { scene } = work;
  const options = optionsOf(work, scaleDenominator);
  return [...drawPlan(scene, options), ...drawDimensions(scene, options), ...drawFindings(scene, work.findings, options, chosen)];
});

const composeMotion = rememberLast((before: Work, plan: Plan, scaleDenominator: number, chosen: string | null) => {
  const now = deriveMotionWork(before, plan);
  return divideDrawing(before.scene, now, optionsOf(now, scaleDenominator), chosen);
});

const optionsOf = ({ scene }: Work, scaleDenominator: number): PlanOptions => ({ units: scene.plan.settings.units, scaleDenominator });

const composeOverlay = rememberLast(drawOverlay);
