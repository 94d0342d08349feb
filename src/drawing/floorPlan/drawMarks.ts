import type { Scene } from '../../scene';
import type { Drawing } from '../drawing';
import { createMarkLabels } from '../labels/markLabels';
import { createStubLabels } from '../labels/stubLabels';
import { placeLabels } from '../layout/placeLabels';
import type { PlanOptions } from './planOptions';

/** The marks of some things alone, as while they are dragged: they keep clear of each other and of nothing else. */
export function drawMarks(scene: Scene, { scaleDenominator }: PlanOptions, ids: ReadonlySet<string>): Drawing {
  return placeLabels([...createMarkLabels(scene, scaleDenominator, ids), ...createStubLabels(scene, scaleDenominator, ids)], [], []).prims;
}
