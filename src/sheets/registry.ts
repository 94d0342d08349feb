import { type Finding, inOrder } from '../rules';
import type { Scene } from '../scene';
import type { Sheet, SheetKind, SheetOptions } from './sheet';

/** Every kind of sheet, in the order of the set: each file of `kinds/`. */
export const SHEETS: readonly SheetKind[] = inOrder(
  Object.values(import.meta.glob<SheetKind>('./kinds/*.ts', { eager: true, import: 'kind' })),
);

/** One sheet of the set; its number in it is derived. Throws for an id that no kind has. */
export function drawSheet(id: string, scene: Scene, findings: readonly Finding[], options: SheetOptions): Sheet {
  const index = SHEETS.findIndex((kind) => kind.id === id);
  const kind = SHEETS[index];
  if (kind === undefined) throw new Error(`there is no sheet “${id}”`);
  return kind.draw(scene, findings, options, { number: index + 1, of: SHEETS.length });
}

/** The dimensioned plan. */
export const drawPlanSheet = (scene: Scene, findings: readonly Finding[], options: SheetOptions): Sheet =>
  drawSheet('plan', scene, findings, options);
