import { SIDES, type Side } from '../../../../catalog';
import { containsPoint, distanceToOutline, dot, sub } from '../../../../geometry';
import type { Hood } from '../../../../plan';
import type { PlacedHood, PlacedMachine, Scene } from '../../../../scene';

/** Overhang beyond an open side: 6 in. */
export const OVERHANG = 152.4;

/** From the deck to the lip, at most: 4 ft. */
export const LIP_ABOVE_DECK = 1219.2;

export type Overhang = Record<Side, number>;

/** A hood over a machine, and how far it stands out on each side. */
export interface HoodOver {
  hood: PlacedHood;
  overhang: Overhang;
}

/** Hoods that cover the machine at least in part; the one with the greatest least overhang first. */
export function findHoodsOver(scene: Scene, machine: PlacedMachine): HoodOver[] {
  const { id } = machine.machine;
  const open = SIDES.filter((side) => !machine.sides[side].isAgainstWall);
  const least = ({ overhang }: HoodOver) => Math.min(...open.map((side) => overhang[side]));
  return scene.hoods
    .flatMap((hood) =>
      hood.covers.filter((cover) => cover.machine === id).map((cover) => ({ hood, overhang: overhangOf(machine, hood, cover.overhang) })),
    )
    .sort((a, b) => least(b) - least(a));
}

/**
 * Of a hood square to the machine, each edge for itself: a hood too short at the left says nothing
 * about its front. Of any other, the least along each side.
 */
function overhangOf(machine: PlacedMachine, hood: PlacedHood, least: Overhang): Overhang {
  if (!isSquareTo(machine, hood)) return least;
  const of = (side: Side) => {
    const { edge, normal } = machine.sides[side];
    return Math.max(...hood.polygon.map((p) => dot(sub(p, edge.a), normal)));
  };
  return { left: of('left'), right: of('right'), front: of('front'), back: of('back') };
}

/** Whether a hood's edges run along the machine's sides. */
export function isSquareTo({ machine }: PlacedMachine, { hood }: PlacedHood): boolean {
  const turn = Math.abs((machine.rotationDeg - hood.rotationDeg) % 90);
  return Math.min(turn, 90 - turn) < 1e-6;
}

export type HoodFootprint = Pick<Hood, 'x' | 'y' | 'rotationDeg' | 'width' | 'depth'>;

/** The hood, turned like the machine, that stands out so far on each side. */
export function fitHood({ machine, sheet, sides }: PlacedMachine, overhang: Overhang): HoodFootprint {
  const right = (overhang.right - overhang.left) / 2;
  const front = (overhang.front - overhang.back) / 2;
  return {
    x: machine.x + sides.right.normal.x * right + sides.front.normal.x * front,
    y: machine.y + sides.right.normal.y * right + sides.front.normal.y * front,
    rotationDeg: machine.rotationDeg,
    width: sheet.width + overhang.left + overhang.right,
    depth: sheet.depth + overhang.front + overhang.back,
  };
}

/** The limit on each open side; on a closed side as far as the wall, and no farther. */
export function leastOverhang({ sides }: PlacedMachine): Overhang {
  const of = (side: Side) => (sides[side].isAgainstWall ? Math.max(0, sides[side].wallDistance ?? 0) : OVERHANG);
  return { left: of('left'), right: of('right'), front: of('front'), back: of('back') };
}

/** Whether the operator of a machine stands under a hood, or with a shoulder under its edge. */
export function isOverStand(scene: Scene, machine: PlacedMachine, hood: PlacedHood): boolean {
  const stand = scene.lines.find((line) => line.machine.machine.id === machine.machine.id)?.stand;
  return stand != null && (containsPoint(hood.polygon, stand.centre) || distanceToOutline(hood.polygon, stand.centre) < stand.width / 2);
}
