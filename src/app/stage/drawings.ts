import { drawOverlay, shownPlan } from '../../editor';
import { type Drawing, drawDimensions, drawFindings, drawPlan, type PlanOptions } from '../../sheets';
import { rememberLast } from '../parts/rememberLast';
import type { AppState } from '../store/store';
import { deriveWork, type Work } from '../store/work';
import { divideDrawing } from './divideDrawing';
import { deriveDenominator } from './screenScale';

/** The plan with its dimensions and the marks of its findings; while something is dragged, what of it stands still. */
export const deriveStillDrawing = (state: AppState): Drawing => deriveParts(state).still;

/** What moves while something is dragged; nothing otherwise. */
export const deriveMovingDrawing = (state: AppState): Drawing => deriveParts(state).moving;

/** What is chosen, its handles, guides and live dimensions. */
export function deriveOverlayDrawing(state: AppState): Drawing {
  return composeOverlay(state.editor, deriveWork(shownPlan(state.editor)).scene);
}

function deriveParts({ editor, finding }: AppState): { still: Drawing; moving: Drawing } {
  const { present } = editor.history;
  const plan = shownPlan(editor);
  const scaleDenominator = deriveDenominator(editor.view.scale);
  if (plan === present) return { still: composePlan(deriveWork(plan), scaleDenominator, finding), moving: NOTHING };
  return composeMotion(deriveWork(present), deriveWork(plan), scaleDenominator, finding);
}

const NOTHING: Drawing = [];

const composePlan = rememberLast((work: Work, scaleDenominator: number, chosen: string | null): Drawing => {
  const { scene } = work;
  const options = optionsOf(work, scaleDenominator);
  return [
    ...drawPlan(scene, options),
    ...drawDimensions(scene, options),
    ...drawFindings(scene, shownFindings(work, chosen), options, chosen),
  ];
});

const composeMotion = rememberLast((before: Work, now: Work, scaleDenominator: number, chosen: string | null) =>
  divideDrawing(before.scene, now.scene, shownFindings(now, chosen), optionsOf(now, scaleDenominator), chosen),
);

/** The ledger numbers its findings in the same order. */
const shownFindings = ({ findings }: Work, chosen: string | null) => findings.filter((f) => f.verdict !== 'clear' || f.id === chosen);

const optionsOf = ({ scene }: Work, scaleDenominator: number): PlanOptions => ({ units: scene.plan.settings.units, scaleDenominator });

const composeOverlay = rememberLast(drawOverlay);
