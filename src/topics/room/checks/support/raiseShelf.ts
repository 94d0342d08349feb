import { createMessages, editTable, type Name, nameBody, type Repair } from '../../../../rules';
import type { Scene, Solid } from '../../../../scene';
import { findClash, isBody, isMeant } from './bodies';

export interface RaiseShelfMessages {
  'repair/raise-shelf': { shelf: Name; height: number };
}

const say = createMessages<RaiseShelfMessages>();

/** Raises an overshelf to a height, where it then meets neither ceiling nor anything else; no repair for any other body. */
export function raiseShelf(scene: Scene, solid: Solid, height: number): Repair[] {
  if (solid.kind !== 'overshelf' || !isFreeAt(scene, solid, height)) return [];
  return [
    {
      id: 'raise-shelf',
      label: say('repair/raise-shelf', { shelf: nameBody(scene, solid), height }),
      edit: (draft) =>
        editTable(draft, solid.owner, ({ fittings }) => {
          for (const fitting of fittings) if (fitting.kind === 'overshelf' && fitting.height === solid.zFrom) fitting.height = height;
        }),
    },
  ];
}

function isFreeAt(scene: Scene, solid: Solid, height: number): boolean {
  const raised = { ...solid, zFrom: height, zTo: height + solid.zTo - solid.zFrom };
  if (scene.room.ceilingHeight !== null && raised.zTo > scene.room.ceilingHeight) return false;
  return scene.solids.every((other) => !isBody(other) || isMeant(scene, raised, other) || findClash(raised, other) === null);
}
