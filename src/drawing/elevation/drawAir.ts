import type { PlacedHood, Scene } from '../../scene';
import type { Prim } from '../drawing';
import { WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { at } from './elevationFrame';
import type { UnrolledLine } from './unrollLine';

/** Hoods over the machine at their true height, and the collar of a direct vent. */
export function drawAir(scene: Scene, unrolled: UnrolledLine): Prim[] {
  return [...scene.hoods.flatMap((hood) => drawHood(hood, unrolled)), ...drawCollar(unrolled)];
}

/** Where a hood's lip runs along the unrolled line; null where it does not cover the machine or its height is not known. */
export function unrollHood({ hood, covers }: PlacedHood, { machine, left, right, sides }: UnrolledLine) {
  const cover = covers.find((item) => item.machine === machine.machine.id);
  if (cover === undefined || hood.lipHeight === null) return null;
  return { from: left - cover.overhang[sides.left], to: right + cover.overhang[sides.right], lip: hood.lipHeight };
}

function drawHood(placed: PlacedHood, unrolled: UnrolledLine): Prim[] {
  const extent = unrollHood(placed, unrolled);
  if (extent === null) return [];
  const { from, to, lip } = extent;
  const pen = createPen('above', placed.hood.id);
  const slant = Math.min(120, (to - from) / 6);
  const top = lip + placed.hood.height;
  const body = [at(from, lip), at(from, lip + 120), at(from + slant, top), at(to - slant, top), at(to, lip + 120), at(to, lip)];
  return [
    pen.area(body, { stroke: 'air', width: WIDTH.medium, fill: 'air', fillOpacity: 0.07 }),
    pen.line([at(from, lip), at(to, lip)], { stroke: 'air', width: WIDTH.bold }),
  ];
}

function drawCollar({ machine }: UnrolledLine): Prim[] {
  const { collar, sheet } = machine;
  if (collar === null || sheet.vent.kind !== 'direct') return [];
  const half = sheet.vent.ductDiameter / 2;
  const pen = createPen('run', machine.machine.id);
  const edge = (x: number) => pen.line([at(x, collar.z), at(x, collar.z + 260)], { stroke: 'air', width: WIDTH.wide, dash: 'long' });
  return [
    pen.line([at(-half - 25, collar.z), at(half + 25, collar.z)], { stroke: 'air', width: WIDTH.bold }),
    edge(-half),
    edge(half),
    pen.symbol(at(0, collar.z + 330), 'arrow', 3, { fill: 'air', angleDeg: -90 }),
  ];
}
