import { along, angleOf, directionOf, directionTo, distance, normalizeDeg, type Point, pointAt, rightOf } from '../../geometry';
import { type Table, wallEnds } from '../../plan';
import type { PlacedRun, PlacedTable, Scene } from '../../scene';
import { EDGES } from '../gestures/resizeBox';
import { pivotOf } from '../gestures/rotate';
import { type Box, boxesOf, nodesOf, startOf } from '../snap/box';
import { findSubject, type SubjectKind } from '../subject/subject';
import type { Cursor } from '../types';
import type { Handle } from './handle';

/** How far the rotate handle stands off, px. */
const ROTATE_OFF_PX = 26;

/** Edges shorter than this on the screen get no handle of their own, px: the corners would cover it. */
const LEAST_EDGE_PX = 36;

/** The grips of a thing at this zoom (px per mm). */
export function handlesFor(scene: Scene, id: string, scale: number): Handle[] {
  const subject = findSubject(scene.plan, id);
  return subject === null ? [] : HANDLES[subject.kind](scene, id, scale);
}

/** Of several handles the one whose middle is nearest; of equals the first. */
export const nearestHandle = (handles: readonly Handle[], point: Point): Handle | null =>
  handles.toSorted((a, b) => distance(a.point, point) - distance(b.point, point))[0] ?? null;

type Grips = (scene: Scene, id: string, scale: number) => Handle[];

const none: Grips = () => [];

const HANDLES: Record<SubjectKind, Grips> = {
  machine: (scene, id, scale) => rotateHandle(scene, id, scale),
  table: tableHandles,
  fitting: fittingHandles,
  thing: (scene, id, scale) => [...boxHandles(scene, id, scale), ...rotateHandle(scene, id, scale)],
  hood: (scene, id, scale) => [...boxHandles(scene, id, scale), ...rotateHandle(scene, id, scale)],
  column: (scene, id, scale) => [...boxHandles(scene, id, scale), ...rotateHandle(scene, id, scale)],
  run: runHandles,
  corner: wallHandles,
  opening: openingHandles,
  'floor-drain': none,
  stub: none,
};

function boxHandles({ plan }: Scene, id: string, scale: number): Handle[] {
  const box = boxesOf(plan).find((item) => item.id === id);
  if (box === undefined) return [];
  return Object.entries(EDGES).flatMap(([name, [su, sv]]): Handle[] => {
    const isCorner = su !== 0 && sv !== 0;
    const length = 2 * (su === 0 ? box.hu : box.hv) * scale;
    if (!isCorner && length < LEAST_EDGE_PX) return [];
    const arm = { x: su * box.hu, y: sv * box.hv };
    const outward = isCorner ? { x: su, y: sv } : arm;
    return [{ id: name, subject: id, point: inBox(box, arm), shape: 'square', cursor: cursorAlong(turned(box, outward)) }];
  });
}

const inBox = ({ centre, u }: Box, arm: Point): Point => along(along(centre, u, arm.x), rightOf(u), arm.y);

const turned = ({ u }: Box, arm: Point): Point => along(along({ x: 0, y: 0 }, u, arm.x), rightOf(u), arm.y);

/** The shape of the pointer for a grip that moves along a direction. */
export function cursorAlong(direction: Point): Cursor {
  const eighth = Math.round((normalizeDeg(angleOf(direction)) % 180) / 45) % 4;
  return (['ew-resize', 'nwse-resize', 'ns-resize', 'nesw-resize'] as const)[eighth] ?? 'move';
}

/** Stands off the front of a thing; off the start of a free table, against its heading. */
function rotateHandle({ plan }: Scene, id: string, scale: number): Handle[] {
  const pivot = pivotOf(plan, id);
  if (pivot === null) return [];
  const box = boxesOf(plan).find((item) => item.id === id);
  const isTable = findSubject(plan, id)?.kind === 'table';
  const reach = (isTable ? 0 : (box?.hv ?? 0)) + ROTATE_OFF_PX / scale;
  const direction = directionOf(pivot.rotationDeg + (isTable ? 180 : 90));
  return [{ id: 'rotate', subject: id, point: along(pivot.centre, direction, reach), shape: 'round', cursor: 'grab' }];
}

function tableHandles(scene: Scene, id: string, scale: number): Handle[] {
  const table = scene.plan.tables.find((item) => item.id === id);
  if (table === undefined) return [];
  return [...legHandles(scene, table), ...startHandle(table), ...rotateHandle(scene, id, scale)];
}

function legHandles({ plan }: Scene, table: Table): Handle[] {
  return nodesOf(table, startOf(plan, table))
    .slice(1)
    .map(({ point, headingDeg }, leg, all) => ({
      id: `leg-${leg}`,
      subject: table.id,
      point,
      shape: leg === all.length - 1 ? 'square' : 'round',
      cursor: cursorAlong(directionOf(headingDeg)),
    }));
}

function startHandle({ id, place }: Table): Handle[] {
  if (place.kind === 'joined') return [];
  return [
    { id: 'start', subject: id, point: { x: place.x, y: place.y }, shape: 'square', cursor: cursorAlong(directionOf(place.headingDeg)) },
  ];
}

function fittingHandles({ tables }: Scene, id: string): Handle[] {
  return tables.flatMap((table) =>
    table.fittings.filter(({ fitting }) => fitting.id === id).flatMap(({ from, to }) => spanHandles(table, id, from, to)),
  );
}

function spanHandles({ path }: PlacedTable, subject: string, from: number, to: number): Handle[] {
  return [['from', from] as const, ['to', to] as const].map(([name, s]) => {
    const { point, direction } = pointAt(path, s);
    return { id: name, subject, point, shape: 'square', cursor: cursorAlong(direction) };
  });
}

function runHandles({ runs }: Scene, id: string): Handle[] {
  return runs.filter(({ run }) => run.id === id).flatMap((placed) => [...pointHandles(placed), ...fanHandle(placed)]);
}

const pointHandles = ({ run }: PlacedRun): Handle[] =>
  run.points.map(({ x, y }, index) => ({ id: `point-${index}`, subject: run.id, point: { x, y }, shape: 'round', cursor: 'move' }));

function fanHandle({ run, fan }: PlacedRun): Handle[] {
  if (fan === null) return [];
  return [{ id: 'fan', subject: run.id, point: { x: fan.point.x, y: fan.point.y }, shape: 'square', cursor: 'move' }];
}

function wallHandles({ plan }: Scene, id: string): Handle[] {
  const ends = wallEnds(plan.room, id) ?? [];
  return ends.map(({ id: corner, x, y }) => ({ id: `corner-${corner}`, subject: id, point: { x, y }, shape: 'round', cursor: 'move' }));
}

function openingHandles({ room }: Scene, id: string): Handle[] {
  return room.openings
    .filter(({ opening }) => opening.id === id)
    .flatMap(({ opening, wall }) => {
      const at = (s: number) => along(wall.a, wall.direction, s);
      const cursor = cursorAlong(directionTo(wall.a, wall.b));
      return [
        { id: 'from', subject: id, point: at(opening.from), shape: 'square' as const, cursor },
        { id: 'to', subject: id, point: at(opening.from + opening.width), shape: 'square' as const, cursor },
      ];
    });
}
