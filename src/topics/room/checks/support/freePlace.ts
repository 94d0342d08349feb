import { measureProtrusion, type Point, translate } from '../../../../geometry';
import { createMessages, editTable, editThing, type Name, nameOwner, type Offer, type Repair } from '../../../../rules';
import { createSolid, type Scene, type Solid } from '../../../../scene';
import { findClash, isBody, isMeant, listExits } from './bodies';

/** How many ways out are tried, and how often a thing may be pushed on in each before it is given up. */
const WAYS = 4;
const PUSHES = 4;

/** Height of the floor that service and door leaves need. */
const HEAD_ROOM = 2000;

export interface MoveMessages {
  'repair/move': { thing: Name; by: number };
}

const say = createMessages<MoveMessages>();

/**
 * Moves a free-standing thing or a free table out by one of several ways, the first that works, and
 * on where that meets something else; no repair when it would still stand in something, out of the
 * room, or where service or a door leaf needs the floor.
 */
export function moveAway(scene: Scene, owner: string, ways: readonly Point[]): Repair[] {
  const move = findMove(scene, owner, ways);
  return move === null ? [] : [createMove(scene, owner, move)];
}

/** The repair that `moveAway` may find. */
export const offerMove = (scene: Scene, owner: string, ways: readonly Point[]): Offer => ({
  ids: [moveId(owner)],
  find: () => moveAway(scene, owner, ways),
});

/** The id of the repair that moves something. */
export const moveId = (owner: string) => `move-${owner}`;

/** The move that `moveAway` makes; null where nothing can be moved, or nowhere to. */
export function findMove(scene: Scene, owner: string, ways: readonly Point[]): Point | null {
  if (!isFree(scene, owner)) return null;
  const solids = scene.solids.filter((solid) => solid.owner === owner);
  const others = [...scene.solids.filter((solid) => solid.owner !== owner && isBody(solid)), ...keptClear(scene)];
  for (const way of ways.slice(0, WAYS)) {
    const move = followPushes(scene, solids, others, way);
    if (move !== null) return move;
  }
  return null;
}

const isFree = ({ things, tables }: Scene, owner: string) =>
  things.some(({ thing }) => thing.id === owner) || tables.some(({ table }) => table.id === owner && table.place.kind === 'free');

export const createMove = (scene: Scene, owner: string, move: Point): Repair => ({
  id: moveId(owner),
  label: say('repair/move', { thing: nameOwner(scene, owner), by: Math.hypot(move.x, move.y) }),
  edit: (draft) => {
    editThing(draft, owner, (thing) => shiftBy(thing, move));
    editTable(draft, owner, ({ place }) => {
      if (place.kind === 'free') shiftBy(place, move);
    });
  },
});

function shiftBy(item: { x: number; y: number }, { x, y }: Point): void {
  item.x += x;
  item.y += y;
}

function followPushes(scene: Scene, solids: readonly Solid[], others: readonly Solid[], way: Point): Point | null {
  let move = way;
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
      if (clash !== null) return listExits(clash.pieces)[0] ?? null;
    }
  }
  return null;
}

const length = ({ a, b }: { a: Point; b: Point }) => Math.hypot(b.x - a.x, b.y - a.y);

const shift = ({ owner, kind, pieces, zFrom, zTo }: Solid, by: Point): Solid =>
  createSolid({ owner, kind, pieces: pieces.map((piece) => translate(piece, by)), zFrom, zTo });

/** Floor that must stay free, as if something stood there. */
function keptClear(scene: Scene): Solid[] {
  const zones = scene.machines.flatMap((machine) => machine.serviceZones.map(({ polygon }) => polygon));
  const sweeps = scene.room.openings.flatMap(({ sweep }) => sweep);
  return [...zones, ...sweeps].map((piece) => createSolid({ owner: '', kind: 'thing', pieces: [piece], zFrom: 0, zTo: HEAD_ROOM }));
}
