import { angleOf, differenceDeg, distance, type Point } from '../../geometry';
import {
  type FieldPath,
  type Fitting,
  freeTable,
  joinTable,
  moveCorners,
  type Plan,
  placeOf,
  type Recipe,
  readField,
  setField,
  setLegLength,
  setSheet,
  slopeDeck,
  surveyDeck,
  tableLength,
  UNKNOWN_BASINS,
  wallEnds,
} from '../../plan';
import { deriveScene } from '../../scene';
import { newFitting } from '../line/newFitting';
import { moveThings, rotateThings } from '../moves/moveThings';
import { startOf } from '../snap/box';
import { SHEET_CONVERSIONS } from './convertSheet';
import type { FieldValue } from './field';

/** What a field needs beside its own value: a recipe, a reason why not, or null where plain setting does. */
export function convertField(plan: Plan, path: FieldPath, value: FieldValue): Recipe | string | null {
  return CONVERSIONS[placeOf(path)]?.(plan, path, value) ?? null;
}

export type Conversion = (plan: Plan, path: FieldPath, value: FieldValue) => Recipe | string | null;

const CONVERSIONS: Readonly<Record<string, Conversion>> = {
  'machines.sheet': (plan, path, value) => setSheet(idAt(plan, path), String(value)),
  'machines.x': moveMachine,
  'machines.y': moveMachine,
  'machines.rotationDeg': turnMachine,
  'tables.place.kind': changePlace,
  'tables.place.side': (plan, path, value) =>
    hasDoor(plan, path, String(value)) ? null : `The machine has no door on its ${String(value)}.`,
  'tables.deck.kind': (plan, path, value) => (value === 'heights' ? surveyDeck : slopeDeck)(idAt(plan, path)),
  'tables.legs.length': (plan, path, value) => setLegLength(idAt(plan, path), Number(path[3]), Number(value)),
  'tables.fittings.kind': changeFitting,
  'runs.fan': changeFan,
  'runs.duct.sides': changeSides,
  'things.basins': changeBasins,
  'room.outline.x': moveCornerTo,
  'room.outline.y': moveCornerTo,
  'room.outline.length': changeWallLength,
  'room.openings.wall': changeWall,
  ...SHEET_CONVERSIONS,
};

/** Id of the thing at the first two steps of a path. */
const idAt = (plan: Plan, path: FieldPath) => String(readField(plan, [...path.slice(0, 2), 'id']));

/** A machine takes its tables, its hood and the start of its run along. */
function moveMachine(plan: Plan, path: FieldPath, value: FieldValue): Recipe {
  const by = Number(value) - Number(readField(plan, path));
  return moveThings(deriveScene(plan), [idAt(plan, path)], path.at(-1) === 'x' ? { x: by, y: 0 } : { x: 0, y: by });
}

function turnMachine(plan: Plan, path: FieldPath, value: FieldValue): Recipe {
  const machine = plan.machines[Number(path[1])];
  const by = Number(value) - (machine?.rotationDeg ?? 0);
  const turn = rotateThings(deriveScene(plan), [idAt(plan, path)], by, { x: machine?.x ?? 0, y: machine?.y ?? 0 });
  return (draft) => {
    turn(draft);
    setField(path, value)(draft);
  };
}

/** Free where it stands; joined to the nearest free door, one that it already heads out of before all others. */
function changePlace(plan: Plan, path: FieldPath, value: FieldValue): Recipe | string | null {
  const table = plan.tables[Number(path[1])];
  if (table === undefined || table.place.kind === value) return () => {};
  if (value === 'free') return freeTable(table.id);
  const start = startOf(plan, table);
  const doors = deriveScene(plan).machines.flatMap(({ machine, sides }) =>
    Object.values(sides).flatMap(({ side, door, normal, table: taken }) => {
      const turn = Math.abs(differenceDeg(start.headingDeg, angleOf(normal)));
      return door === null || taken !== null ? [] : [{ machine: machine.id, side, isAhead: turn <= 45, away: distance(door, start) }];
    }),
  );
  const best = doors.sort((a, b) => Number(b.isAhead) - Number(a.isAhead) || a.away - b.away)[0];
  return best === undefined ? 'No machine has a free door for this table.' : joinTable(table.id, best.machine, best.side);
}

function hasDoor(plan: Plan, path: FieldPath, side: string): boolean {
  const place = plan.tables[Number(path[1])]?.place;
  const machine = deriveScene(plan).machines.find((item) => place?.kind === 'joined' && item.machine.id === place.machine);
  return machine?.sheet.doors.some((door) => door === side) ?? false;
}

/** Another kind of fitting of its usual size, in the same place, as far as it fits on the table. */
function changeFitting(plan: Plan, path: FieldPath, value: FieldValue): Recipe | string | null {
  const table = plan.tables[Number(path[1])];
  const fitting = table?.fittings[Number(path[3])];
  if (table === undefined || fitting === undefined || fitting.kind === value) return () => {};
  const whole = tableLength(table);
  const shape = newFitting(value as Fitting['kind'], whole);
  const length = Math.min(shape.length, whole);
  const at = Math.min(Math.max(fitting.at, length / 2), whole - length / 2);
  return setField(path.slice(0, 4), { ...shape, length, id: fitting.id, at });
}

/** A fan in the middle of the run, as far as anything is known of it; or none. */
function changeFan(plan: Plan, path: FieldPath, value: FieldValue): Recipe {
  const run = deriveScene(plan).runs.find((item) => item.run.id === idAt(plan, path));
  const fan = { at: (run?.length ?? 0) / 2, attitude: 'upright', drainHole: null, cordWay: null };
  if (value === true && run?.run.fan) return () => {};
  return setField(path, value === true ? fan : null);
}

/** A rectangular duct as wide and as high as the round one; or a round one again. */
function changeSides(plan: Plan, path: FieldPath, value: FieldValue): Recipe {
  const { diameter, duct } = plan.runs[Number(path[1])] ?? {};
  if (value === true && duct?.sides) return () => {};
  return setField(path, value === true ? { width: diameter, height: diameter } : null);
}

/** Bowls and boards of which nothing is known yet; or nothing. */
function changeBasins(plan: Plan, path: FieldPath, value: FieldValue): Recipe {
  if (value === true && readField(plan, path) !== null) return () => {};
  return setField(path, value === true ? { ...UNKNOWN_BASINS } : null);
}

function moveCornerTo(plan: Plan, path: FieldPath, value: FieldValue): Recipe | null {
  const corner = plan.room.outline[Number(path[2])];
  if (corner === undefined) return null;
  const place: Point = { x: corner.x, y: corner.y, [path.at(-1) as 'x' | 'y']: Number(value) };
  return moveCorners(new Map([[corner.id, place]]));
}

/** The wall at its end moves in or out, with both its corners, so that right angles stay. */
function changeWallLength(plan: Plan, path: FieldPath, value: FieldValue): Recipe | string | null {
  const { outline } = plan.room;
  const ends = wallEnds(plan.room, outline[Number(path[2])]?.id ?? '');
  const beyond = outline[(Number(path[2]) + 2) % outline.length];
  if (ends === null || beyond === undefined) return null;
  const [a, b] = ends;
  const factor = Number(value) / distance(a, b) - 1;
  const by = { x: (b.x - a.x) * factor, y: (b.y - a.y) * factor };
  const places = [b, beyond].map((corner): [string, Point] => [corner.id, { x: corner.x + by.x, y: corner.y + by.y }]);
  return moveCorners(new Map(places));
}

/** An opening on another wall lies as far along as that wall allows. */
function changeWall(plan: Plan, path: FieldPath, value: FieldValue): Recipe {
  const wall = deriveScene(plan).room.walls.find(({ id }) => id === value);
  return (draft) => {
    const opening = draft.room.openings[Number(path[2])];
    if (opening === undefined || wall === undefined) return;
    opening.wall = wall.id;
    opening.from = Math.max(0, Math.min(opening.from, wall.length - opening.width));
  };
}
