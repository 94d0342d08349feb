import { type Point, rotate } from '../../geometry';
import type { Recipe } from '../edit';
import type { Plan, Table } from '../planSchema';
import { storedDeg } from '../storedDeg';
import { moveCorners, wallEnds } from './walls';

/**
 * Moves things. Joined tables and the run of a machine go with their machine; openings slide along their wall.
 * A joined table by itself does not move: free it first, or change how it is joined.
 */
export function moveItems(ids: readonly string[], by: Point): Recipe {
  const shift = (point: Point): Point => ({ x: point.x + by.x, y: point.y + by.y });
  return (draft) => {
    const chosen = new Set(ids);
    slideOpenings(draft, chosen, by);
    carry(draft, chosen, () => shift, 0);
  };
}

/** Turns things clockwise, all about one point, or each about its own centre. Openings and joined tables stay. */
export function rotateItems(ids: readonly string[], deg: number, about: Point | null = null): Recipe {
  return (draft) => carry(draft, new Set(ids), (centre) => turnedAbout(about ?? centre, deg), deg);
}

/** Puts a thing at a place, and at a rotation when one is given. A free table is placed by its start. */
export function placeItem(id: string, place: Point & { rotationDeg?: number }): Recipe {
  return (draft) => {
    const item = bodies(draft).find((body) => body.id === id) ?? freeTables(draft).find((table) => table.id === id)?.place;
    if (item === undefined) return;
    const by = { x: place.x - item.x, y: place.y - item.y };
    if (place.rotationDeg !== undefined) rotateItems([id], place.rotationDeg - angleOf(item))(draft);
    moveItems([id], by)(draft);
  };
}

type Motion = (point: Point) => Point;

const turnedAbout =
  (pivot: Point, deg: number): Motion =>
  (point) => {
    const arm = rotate({ x: point.x - pivot.x, y: point.y - pivot.y }, deg);
    return { x: pivot.x + arm.x, y: pivot.y + arm.y };
  };

/** Carries the chosen things by a motion that may depend on each thing's own centre. */
function carry(draft: Plan, chosen: ReadonlySet<string>, motionOf: (centre: Point) => Motion, deg: number): void {
  carryRuns(draft, chosen, motionOf);
  for (const body of bodies(draft)) if (chosen.has(body.id)) put(body, motionOf({ x: body.x, y: body.y }), deg);
  for (const { id, place } of freeTables(draft)) if (chosen.has(id)) put(place, motionOf({ x: place.x, y: place.y }), deg);
  const corners = draft.room.outline.filter((corner) => chosen.has(corner.id));
  if (corners.length === 0) return;
  moveCorners(new Map(corners.map((corner) => [corner.id, motionOf({ x: corner.x, y: corner.y })(corner)])))(draft);
}

/** A run goes with its machine, about the machine's centre; by itself about its first point. */
function carryRuns(draft: Plan, chosen: ReadonlySet<string>, motionOf: (centre: Point) => Motion): void {
  for (const run of draft.runs) {
    const machine = chosen.has(run.machine) ? draft.machines.find((item) => item.id === run.machine) : undefined;
    const centre = machine ?? (chosen.has(run.id) ? run.points[0] : undefined);
    if (centre === undefined) continue;
    const motion = motionOf({ x: centre.x, y: centre.y });
    for (const point of run.points) Object.assign(point, motion(point));
  }
}

type Body = Point & { id: string; rotationDeg?: number };
type FreePlace = Extract<Table['place'], { kind: 'free' }>;

function bodies(draft: Plan): Body[] {
  const { columns, floorDrains, stubs } = draft.room;
  return [...draft.machines, ...draft.things, ...draft.hoods, ...columns, ...floorDrains, ...stubs];
}

function freeTables(draft: Plan): { id: string; place: FreePlace }[] {
  return draft.tables.flatMap(({ id, place }) => (place.kind === 'free' ? [{ id, place }] : []));
}

const angleOf = (item: Body | FreePlace): number => ('headingDeg' in item ? item.headingDeg : (item.rotationDeg ?? 0));

function put(item: Body | FreePlace, motion: Motion, deg: number): void {
  Object.assign(item, motion(item));
  if ('headingDeg' in item) item.headingDeg = storedDeg(item.headingDeg + deg);
  else if (item.rotationDeg !== undefined) item.rotationDeg = storedDeg(item.rotationDeg + deg);
}

/** An opening goes along its wall with the part of the motion that points there, unless the wall itself moves. */
function slideOpenings(draft: Plan, chosen: ReadonlySet<string>, by: Point): void {
  for (const opening of draft.room.openings) {
    const ends = wallEnds(draft.room, opening.wall);
    if (!chosen.has(opening.id) || ends === null || ends.some((corner) => chosen.has(corner.id))) continue;
    const [a, b] = ends;
    const length = Math.hypot(b.x - a.x, b.y - a.y);
    const along = ((b.x - a.x) * by.x + (b.y - a.y) * by.y) / length;
    opening.from = Math.max(0, Math.min(opening.from + along, length - opening.width));
  }
}
