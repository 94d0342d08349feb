import { drawOverlay, shownPlan } from '../../editor';
import { type Drawing, drawDimensions, drawFindings, drawPlan } from '../../sheets';
import { rememberLast } from '../parts/rememberLast';
import type { AppState } from '../store/store';
import { deriveWork, type Work } from '../store/work';
import { deriveDenominator } from './screenScale';

/** The plan with its dimensions and the marks of its findings, as the canvas shows it. */
export function derivePlanDrawing(state: AppState): Drawing {
  return composePlan(deriveWork(shownPlan(state.editor)), deriveDenominator(state.editor.view.scale), state.finding);
}

/** What is chosen, its handles, guides and live dimensions. */
export function deriveOverlayDrawing(state: AppState): Drawing {
  return composeOverlay(state.editor, deriveWork(shownPlan(state.editor)).scene);
}

const composePlan = rememberLast(({ scene, findings }: Work, scaleDenominator: number, chosen: string | null): Drawing => {
  const options = { units: scene.plan.settings.units, scaleDenominator };
  // The ledger numbers its findings in the same order.
  const open = findings.filter((f) => f.verdict !== 'clear' || f.id === chosen);
  return [...drawPlan(scene, options), ...drawDimensions(scene, options), ...drawFindings(scene, open, options, chosen)];
});

const composeOverlay = rememberLast(drawOverlay);
