import type { Point } from '../../geometry';
import type { Recipe } from '../edit';
import { wallLength } from '../mirrorRoom';
import type { Corner, Opening, Plan, Room } from '../planSchema';

/**
 * Edits of the outline. What lies on a wall stays where it was in the room as far as the wall allows; a wall that has
 * become too short for its opening is left so, for the validation to refuse with the opening's name.
 */

/** Moves corners to places. */
export function moveCorners(places: ReadonlyMap<string, Point>): Recipe {
  return (draft) => {
    const before = draft.room.outline.map((corner) => ({ ...corner }));
    for (const corner of draft.room.outline) {
      const place = places.get(corner.id);
      if (place !== undefined) Object.assign(corner, { x: place.x, y: place.y });
    }
    for (const opening of draft.room.openings) keepOnWall(opening, before, draft.room.outline, places);
  };
}

/** Moves one corner. */
export const moveCorner = (id: string, place: Point): Recipe => moveCorners(new Map([[id, place]]));

/** Moves a wall with both its corners. */
export function moveWall(wall: string, by: Point): Recipe {
  return (draft) => {
    const ends = wallEnds(draft.room, wall);
    if (ends === null) return;
    moveCorners(new Map(ends.map((corner) => [corner.id, { x: corner.x + by.x, y: corner.y + by.y }])))(draft);
  };
}

/** Breaks a wall in two at a place; the second part gets the new corner's id. */
export function addCorner(wall: string, corner: Corner): Recipe {
  return ({ room }) => {
    const index = room.outline.findIndex((item) => item.id === wall);
    if (index < 0) return;
    const places = openingPlaces(room, [wall]);
    room.outline.splice(index + 1, 0, { ...corner });
    putBack(room, places, [wall, corner.id]);
  };
}

/** Takes a corner out: its two walls become one. A triangle keeps its corners. */
export function removeCorner(id: string): Recipe {
  return ({ room }) => {
    const index = room.outline.findIndex((item) => item.id === id);
    const before = room.outline[(index + room.outline.length - 1) % room.outline.length];
    if (index < 0 || before === undefined || room.outline.length <= 3) return;
    const places = openingPlaces(room, [before.id, id]);
    room.outline.splice(index, 1);
    putBack(room, places, [before.id]);
  };
}

/** Both corners of a wall, first the one where it begins; null when there is no such wall. */
export function wallEnds(room: Pick<Room, 'outline'>, wall: string): [Corner, Corner] | null {
  const index = room.outline.findIndex((corner) => corner.id === wall);
  const from = room.outline[index];
  const to = room.outline[(index + 1) % room.outline.length];
  return from === undefined || to === undefined ? null : [from, to];
}

/** Where an opening's middle lies in the room; null when its wall is gone. */
function openingCentre(room: Pick<Room, 'outline'>, opening: Opening): Point | null {
  const ends = wallEnds(room, opening.wall);
  if (ends === null) return null;
  const [a, b] = ends;
  const share = (opening.from + opening.width / 2) / Math.hypot(b.x - a.x, b.y - a.y);
  return { x: a.x + (b.x - a.x) * share, y: a.y + (b.y - a.y) * share };
}

type OpeningPlace = { opening: Opening; centre: Point };

function openingPlaces(room: Plan['room'], walls: readonly string[]): OpeningPlace[] {
  return room.openings.flatMap((opening) => {
    const centre = walls.includes(opening.wall) ? openingCentre(room, opening) : null;
    return centre === null ? [] : [{ opening, centre }];
  });
}

/** Puts openings on that of the walls which passes nearest to where they were. */
function putBack(room: Plan['room'], places: readonly OpeningPlace[], walls: readonly string[]): void {
  for (const { opening, centre } of places) {
    const candidates = walls.flatMap((wall) => project(room, wall, centre) ?? []);
    const nearest = candidates.sort((a, b) => a.distance - b.distance)[0];
    if (nearest === undefined) continue;
    opening.wall = nearest.wall;
    opening.from = clamp(nearest.along - opening.width / 2, nearest.length - opening.width);
  }
}

interface Foot {
  wall: string;
  /** From the start of the wall to the point of it that is nearest. */
  along: number;
  distance: number;
  length: number;
}

function project(room: Plan['room'], wall: string, point: Point): Foot | null {
  const ends = wallEnds(room, wall);
  if (ends === null) return null;
  const [a, b] = ends;
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const dx = (b.x - a.x) / length;
  const dy = (b.y - a.y) / length;
  const along = clamp((point.x - a.x) * dx + (point.y - a.y) * dy, length);
  return { wall, along, length, distance: Math.hypot(point.x - a.x - dx * along, point.y - a.y - dy * along) };
}

/** An opening keeps its distance from the end of its wall that did not move. */
function keepOnWall(opening: Opening, before: readonly Corner[], after: readonly Corner[], moved: ReadonlyMap<string, Point>): void {
  const growth = wallLength(after, opening.wall) - wallLength(before, opening.wall);
  if (Math.abs(growth) < 1e-9) return;
  if (moved.has(opening.wall)) opening.from += growth;
  opening.from = clamp(opening.from, wallLength(after, opening.wall) - opening.width);
}

const clamp = (value: number, max: number): number => Math.max(0, Math.min(value, max));
