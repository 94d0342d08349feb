import { type DataSheet, findFamily } from '../catalog';
import { type Point, rotate } from '../geometry';
import { mirrorDataSheet, mirrorSheetId, mirrorSide } from './mirrorDataSheet';
import { mirrorRoom } from './mirrorRoom';
import type { Machine, Plan, Table, TablePlace } from './planSchema';
import { findDataSheet } from './resolveDataSheet';
import { storedDeg } from './storedDeg';

/** A rigid motion of the whole plan, in this order: mirrored (x for −x), turned about the origin, moved. */
export interface PlanTransform {
  mirror?: boolean;
  /** Clockwise, any angle. */
  rotateDeg?: number;
  move?: Point;
}

/**
 * The same plan elsewhere, turned or seen in a mirror: every verdict must stay the same. In a mirror the machines are
 * other machines, so the plan gets data sheets of its own with left and right swapped; mirrored twice it is the plan
 * that it was. To turn a line into its other hand with the machine that can be bought, see `mirrorLine`.
 */
export function transformPlan(plan: Plan, transform: PlanTransform): Plan {
  const seen = transform.mirror === true ? mirrorSheets(mirrorPlaces(plan)) : plan;
  return movePlan(seen, transform.rotateDeg ?? 0, transform.move ?? { x: 0, y: 0 });
}

// ---------------------------------------------------------------- turn and move

function movePlan(plan: Plan, rotateDeg: number, move: Point): Plan {
  const moved = <T extends Point>(item: T): T => {
    const at = rotate(item, rotateDeg);
    return { ...item, x: at.x + move.x, y: at.y + move.y };
  };
  const turned = <T extends Point & { rotationDeg: number }>(item: T): T => ({
    ...moved(item),
    rotationDeg: storedDeg(item.rotationDeg + rotateDeg),
  });
  const placed = (place: TablePlace): TablePlace =>
    place.kind === 'joined' ? place : { ...moved(place), headingDeg: storedDeg(place.headingDeg + rotateDeg) };
  return {
    ...plan,
    room: {
      ...plan.room,
      outline: plan.room.outline.map(moved),
      northDeg: storedDeg(plan.room.northDeg + rotateDeg),
      columns: plan.room.columns.map(turned),
      floorDrains: plan.room.floorDrains.map(moved),
      stubs: plan.room.stubs.map(moved),
    },
    machines: plan.machines.map(turned),
    tables: plan.tables.map((table) => ({ ...table, place: placed(table.place) })),
    things: plan.things.map(turned),
    hoods: plan.hoods.map(turned),
    runs: plan.runs.map((run) => ({ ...run, points: run.points.map(moved) })),
  };
}

// ---------------------------------------------------------------- mirror

/** Everything but the data sheets, in a mirror that swaps x for −x. */
export function mirrorPlaces(plan: Plan): Plan {
  return {
    ...plan,
    room: mirrorRoom(plan.room),
    machines: plan.machines.map(flipped),
    tables: plan.tables.map(mirrorTable),
    things: plan.things.map(flipped),
    hoods: plan.hoods.map(flipped),
    runs: plan.runs.map((run) => ({ ...run, points: run.points.map((point) => ({ ...point, x: 0 - point.x })) })),
    order: { ...plan.order, hand: mirrorHand(plan.order.hand) },
  };
}

const flipped = <T extends Point & { rotationDeg: number }>(item: T): T => ({ ...item, x: 0 - item.x, rotationDeg: 0 - item.rotationDeg });

function mirrorTable(table: Table): Table {
  return {
    ...table,
    place: mirrorPlace(table.place),
    legs: table.legs.map((leg) => ({ ...leg, turnDeg: 0 - leg.turnDeg })),
    operatorSide: table.operatorSide === 'left' ? 'right' : 'left',
  };
}

function mirrorPlace(place: TablePlace): TablePlace {
  if (place.kind === 'free') return { ...place, x: 0 - place.x, headingDeg: storedDeg(180 - place.headingDeg) };
  return { ...place, side: mirrorSide(place.side), offset: 0 - place.offset, skewDeg: 0 - place.skewDeg };
}

function mirrorHand(hand: Plan['order']['hand']): Plan['order']['hand'] {
  if (hand === null) return null;
  return hand === 'left-to-right' ? 'right-to-left' : 'left-to-right';
}

/** Gives each machine the mirrored data sheet; a sheet that comes out as the family of its name needs no copy. */
function mirrorSheets(plan: Plan): Plan {
  const used = new Set(plan.machines.map((machine) => machine.sheet));
  const kept = plan.sheets.filter((sheet) => !used.has(sheet.id));
  const mirrored = [...used].flatMap((id) => findDataSheet(plan, id) ?? []).map(mirrorDataSheet);
  const machines = plan.machines.map((machine): Machine => ({ ...machine, sheet: mirrorSheetId(machine.sheet) }));
  return { ...plan, machines, sheets: [...kept, ...mirrored.filter((sheet) => !isFamily(sheet))] };
}

function isFamily(sheet: DataSheet): boolean {
  const family = findFamily(sheet.id);
  return family !== undefined && JSON.stringify(family) === JSON.stringify(sheet);
}
