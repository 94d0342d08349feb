import { measureProtrusion, type Point, type Polygon } from '../../geometry';
import type { PlacedThing, Scene, Solid } from '../../scene';
import type { Repair } from '../types';
import { findClash, isBody, isMeant } from './bodies';
import { thingName } from './bodyNames';
import { editThing } from './drafts';

/** How often a thing may be pushed on before it is given up. */
const PUSHES = 4;

/** Height of the floor that service and door leaves need. */
const HEAD_ROOM = 2000;

/**
 * Moves a free-standing thing by the least push that was found, and on where that meets something else;
 * no repair when it would still stand in something, out of the room, or where service or a door leaf needs the floor.
 */
export function moveAway(scene: Scene, owner: string, push: Point): Repair[] {
  const thing = scene.things.find((item) => item.thing.id === owner);
  if (thing === undefined) return [];
  const move = findFreeMove(scene, owner, push);
  return move === null ? [] : [createMove(scene, thing, move)];
}

function createMove(scene: Scene, thing: PlacedThing, move: Point): Repair {
  return {
    id: `move-${thing.thing.id}`,
    label: (f) => `Move ${thingName(scene, thing)} ${f.length(Math.hypot(move.x, move.y))}`,
    edit: (draft) =>
      editThing(draft, thing.thing.id, (item) => {
        item.x += move.x;
        item.y += move.y;
      }),
  };
}

function findFreeMove(scene: Scene, owner: string, push: Point): Point | null {
  const solids = scene.solids.filter((solid) => solid.owner === owner);
  const others = [...scene.solids.filter((solid) => solid.owner !== owner && isBody(solid)), ...keptClear(scene)];
  let move = push;
  for (let i = 0; i < PUSHES; i += 1) {
    const next = findPush(
      scene,
      solids.map((solid) => shift(solid, move)),
      others,
    );
    if (next === null) return move;
    move = { x: move.x + next.x, y: move.y + next.y };
  }
  return null;
}

/** The next push that the moved bodies need; null when they stand free. */
function findPush(scene: Scene, solids: readonly Solid[], others: readonly Solid[]): Point | null {
  for (const solid of solids) {
    const out = solid.pieces
      .map((piece) => measureProtrusion(scene.room.outline, piece).place)
      .find((place) => place !== null && length(place) > 1e-6);
    if (out != null) return { x: out.b.x - out.a.x, y: out.b.y - out.a.y };
    for (const other of others) {
      const clash = isMeant(scene, solid, other) ? null : findClash(other, solid);
      if (clash !== null) return clash.push;
    }
  }
  return null;
}

const length = ({ a, b }: { a: Point; b: Point }) => Math.hypot(b.x - a.x, b.y - a.y);

const shift = (solid: Solid, { x, y }: Point): Solid => ({
  ...solid,
  pieces: solid.pieces.map((piece) => piece.map((p) => ({ x: p.x + x, y: p.y + y }))),
});

/** Floor that must stay free, as if something stood there. */
function keptClear(scene: Scene): Solid[] {
  const zones = scene.machines.flatMap((machine) => machine.serviceZones.map(({ polygon }) => polygon));
  const sweeps = scene.room.openings.flatMap(({ sweep }) => sweep);
  return [...zones, ...sweeps].map((piece: Polygon): Solid => ({ owner: '', kind: 'thing', pieces: [piece], zFrom: 0, zTo: HEAD_ROOM }));
}
