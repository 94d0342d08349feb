import type { ControlsPosition, DataSheet } from '../catalog';
import { mirrorDataSheet } from './mirrorDataSheet';
import type { Machine, Plan } from './planSchema';
import { findDataSheet } from './resolveDataSheet';
import { mirrorPlaces } from './transformPlan';

/**
 * The line in its other hand with machines that can be bought: the room and all in it in a mirror, the data sheets as
 * they were, and the controls at the position of the sheet that is nearest to where the mirror shows them.
 */
export function mirrorLine(plan: Plan): Plan {
  const mirrored = mirrorPlaces(plan);
  return { ...mirrored, machines: mirrored.machines.map((machine) => moveControls(machine, findDataSheet(plan, machine.sheet))) };
}

function moveControls(machine: Machine, sheet: DataSheet | undefined): Machine {
  const wanted = sheet && mirrorDataSheet(sheet).controls.find((position) => position.id === machine.controls);
  if (sheet === undefined || wanted === undefined) return machine;
  const nearest = [...sheet.controls].sort((a, b) => distance(a, wanted) - distance(b, wanted))[0];
  return nearest === undefined ? machine : { ...machine, controls: nearest.id };
}

/** A position on another side is never the nearest while one on the same side exists. */
function distance(a: ControlsPosition, b: ControlsPosition): number {
  return (a.side === b.side ? 0 : 1e6) + Math.abs(a.from - b.from) + Math.abs(a.zFrom - b.zFrom);
}
