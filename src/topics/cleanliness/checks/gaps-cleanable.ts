import type { Side } from '../../../catalog';
import {
  boundsOf,
  depthBefore,
  directionTo,
  distance,
  growBounds,
  leftOf,
  type Point,
  type Polygon,
  rightOf,
  type Segment,
  scale,
} from '../../../geometry';
import { pathOf, type ThingKind } from '../../../plan';
import {
  type Check,
  createMessages,
  isUnder,
  lengthOf,
  type Measurement,
  type Message,
  type Name,
  nameMachine,
  nameOwner,
  nameTable,
  nameThing,
  segmentPlace,
} from '../../../rules';
import {
  distanceToWalls,
  machinePath,
  type PlacedMachine,
  type PlacedSide,
  type PlacedTable,
  type PlacedThing,
  type Scene,
  type Solid,
  solidsIn,
  thingPath,
} from '../../../scene';
import { frontFace, judgeGap } from '../../room';
import { CLEANING_ROOM, CLEANING_ROOM_NARROW } from '../formulas/cleanlinessLimits';

/** Room that one city takes as enough to clean in; and the narrower one, of what is short and stands free. */
const ROOM = lengthOf(CLEANING_ROOM);
const NARROW = lengthOf(CLEANING_ROOM_NARROW);
/** Equipment shorter than this is short for that city: 60 in. */
const SHORT = 1524;
/** How far a table or a thing may be drawn into its wall and still stand at it. */
const INTO = 50;

export const check: Check = {
  id: 'gaps-cleanable',
  order: 900,
  title: 'Gaps behind what is fixed are closed, or wide enough to clean',
  group: 'sanitary',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section:
      '4-402.11, as WAC 246-215-04405: room to clean, or a gap of at most 1/32 in, or sealed where it is splashed; Pennsylvania prints “both” for “or”',
    confidence: 'read',
  },
  why: 'A gap that no hand comes into is where soil and vermin stay. How wide is wide enough the code leaves open; one city says 14 in from the wall, and of what stands free and is shorter than 60 in, 14 in at both sides with 6 in behind, or 6 in with 14 in. As much is taken from what stands fast to whatever else does: a machine, a table, a sink, shelving, a column. Where codes differ, the plan says which counts; the strictest has every narrow gap sealed, however small.',
  measure: (scene) => [
    ...scene.tables.flatMap((table) => measureTable(scene, table)),
    ...scene.machines.flatMap((machine) => measureMachine(scene, machine)),
    ...scene.things.filter(({ thing }) => STAYING.has(thing.kind)).flatMap((thing) => measureThing(scene, thing)),
  ],
};

/** What is said of the narrowest gap beside what stands fast. Widths in mm. */
export interface GapsCleanableMessages {
  'gaps-cleanable/against': { item: Name; to: Name };
  'gaps-cleanable/unknown': Left;
  'gaps-cleanable/ask-sealed': { item: Name };
  'gaps-cleanable/sealed': Left;
  'gaps-cleanable/open': Left & { wanted: number; mayRoll: boolean };
}

interface Left {
  item: Name;
  /** The side of the item at which it is left. */
  side: Side;
  width: number;
  /** The wall, or what else stands fast. */
  to: Name;
}

const say = createMessages<GapsCleanableMessages>();

interface Gap {
  edge: Segment;
  width: number;
  side: Side;
  /** What it is left to, where that is no wall. */
  neighbour?: Neighbour;
}

/** Something else that stands fast. */
interface Neighbour {
  id: string;
  name: Name;
  /** Its own joints are said to be sealed. */
  sealed: boolean;
}

/** What is narrow there, and what is known of its sealing. */
interface Subject {
  id: string;
  name: Name;
  sealed: boolean | null;
  path: (string | number)[];
  /** Perhaps light enough to be moved for cleaning: then it is only a watch. */
  mayMove?: boolean;
}

/** Its back, to the wall or to what else stands fast. */
function measureTable(scene: Scene, placed: PlacedTable): Measurement[] {
  const { id, make } = placed.table;
  const name = nameTable(scene, placed);
  const neighbours = neighboursOf(scene, id, placed.outline);
  const behind = backEdges(placed).map(({ a, b, out }) => {
    const found = distanceToWalls({ a, b }, out, scene.room.walls, INTO);
    return narrowedBy(scene, neighbours, { edge: { a, b }, width: widthOf(found), side: 'back' }, out);
  });
  const gaps = behind.filter(isOpen(make.sealed));
  return judgeNarrowest(scene, gaps, { id, name, sealed: make.sealed, path: pathOf(scene.plan, 'tables', id, 'make', 'sealed') });
}

function backEdges({ table, backEdge }: PlacedTable): (Segment & { out: Point })[] {
  return backEdge.slice(1).flatMap((b, i) => {
    const a = backEdge[i];
    if (a === undefined || distance(a, b) < 1) return [];
    const heading = directionTo(a, b);
    return [{ a, b, out: table.operatorSide === 'left' ? rightOf(heading) : leftOf(heading) }];
  });
}

/** Its back, and the sides that no table is joined to, to the wall or to what else stands fast. People stand before its front. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { id, hookUp } = placed.machine;
  const name = nameMachine(scene, placed);
  const { left, right, back } = placed.sides;
  const neighbours = neighboursOf(scene, id, placed.footprint);
  const gapAt = ({ side, edge, normal, wallDistance }: PlacedSide): Gap =>
    narrowedBy(scene, neighbours, { edge, width: widthOf(wallDistance), side }, normal);
  const beside = [left, right].filter(({ table }) => table === null).map(gapAt);
  const behind = back.table === null ? [gapAt(back)] : [];
  const isFree = Object.values(placed.sides).every(({ table }) => table === null);
  if (isFree && isFreeToClean(placed.sheet.width, hookUp.clearBelow, { beside: narrowest(beside), behind: narrowest(behind) })) return [];
  const gaps = [...beside, ...behind].filter(isOpen(hookUp.sealed));
  const path = machinePath(placed, 'hookUp', 'sealed');
  return judgeNarrowest(scene, gaps, { id, name, sealed: hookUp.sealed, path });
}

/** A wall that is not there is far; into one nothing is left. */
const widthOf = (toWall: number | null) => (toWall === null ? Number.POSITIVE_INFINITY : Math.max(0, toWall));

const narrowest = (gaps: readonly Gap[]) => Math.min(...gaps.map(({ width }) => width));

/** Too narrow to clean, and not closed from the other side: a joint that one of the two says is sealed is sealed. */
const isOpen =
  (sealed: boolean | null) =>
  ({ width, neighbour }: Gap) =>
    isUnder(width, ROOM) && (sealed === true || neighbour?.sealed !== true);

/** On legs, shorter than 60 in: as that city prints it, 14 in at both sides and 6 in behind, or the other way about. */
function isFreeToClean(width: number, clearBelow: number | null, space: { beside: number; behind: number }): boolean {
  if ((clearBelow ?? 0) <= 0 || !isUnder(width, SHORT)) return false;
  const has = (beside: number, behind: number) => !isUnder(space.beside, beside) && !isUnder(space.behind, behind);
  return has(ROOM, NARROW) || has(NARROW, ROOM);
}

/** The rule is for what is not easily moved: carts and bins are rolled away, and shelving that is light is taken off its wall. */
const STAYING: ReadonlySet<ThingKind> = new Set<ThingKind>(['three-compartment-sink', 'hand-sink', 'shelving']);

/** Its back and its sides, to the wall or to what else stands fast, whichever is nearer; people stand before its front. */
function measureThing(scene: Scene, placed: PlacedThing): Measurement[] {
  const { thing, front } = placed;
  const { id, width, depth, clearBelow, sealed } = thing;
  const name = nameThing(scene, placed);
  const neighbours = neighboursOf(scene, id, placed.polygon, thing.height);
  const gapAt = (out: Point, across: number, along: number, side: Side): Gap => {
    const edge = frontFace(thing, out, across, along);
    const width = widthOf(distanceToWalls(edge, out, scene.room.walls, INTO));
    return narrowedBy(scene, neighbours, { edge, width, side }, out);
  };
  const behind = gapAt(scale(front, -1), width, depth, 'back');
  const left = gapAt(rightOf(front), depth, width, 'left');
  const right = gapAt(leftOf(front), depth, width, 'right');
  if (isFreeToClean(width, clearBelow, { beside: Math.min(left.width, right.width), behind: behind.width })) return [];
  const gaps = [behind, left, right].filter(isOpen(sealed));
  const path = thingPath(placed, 'sealed');
  return judgeNarrowest(scene, gaps, { id, name, sealed, path, mayMove: thing.kind === 'shelving' });
}

/** What else stands fast, near enough to leave it a gap, and not above it. */
const neighboursOf = (scene: Scene, id: string, outline: Polygon, height = Number.POSITIVE_INFINITY): Solid[] =>
  solidsIn(scene, growBounds(boundsOf(outline), ROOM)).filter(
    (solid) => solid.owner !== id && solid.zFrom < height && standsFast(scene, solid),
  );

const standsFast = ({ things }: Scene, { owner, kind }: Solid): boolean =>
  kind === 'thing' ? things.some(({ thing }) => thing.id === owner && STAYING.has(thing.kind)) : FAST.has(kind);

/** The gap to what stands fast before a side, where that is nearer than the wall and too near to clean. */
function narrowedBy(scene: Scene, neighbours: readonly Solid[], gap: Gap, normal: Point): Gap {
  let depth = Math.min(gap.width, ROOM);
  let owner: string | null = null;
  for (const solid of neighbours) {
    for (const piece of solid.pieces) {
      const found = depthBefore(piece, gap.edge, normal, depth, DRAWN);
      if (!isUnder(found, depth)) continue;
      depth = found;
      owner = solid.owner;
    }
  }
  return owner === null ? gap : { edge: gap.edge, width: Math.max(0, depth), side: gap.side, neighbour: neighbourOf(scene, owner) };
}

/** What reaches no farther past the end of a side lies beside it. */
const DRAWN = 1;

const FAST: ReadonlySet<Solid['kind']> = new Set<Solid['kind']>(['machine', 'table', 'column']);

function neighbourOf(scene: Scene, id: string): Neighbour {
  const sealed = [
    scene.machines.find(({ machine }) => machine.id === id)?.machine.hookUp.sealed,
    scene.tables.find(({ table }) => table.id === id)?.table.make.sealed,
    scene.things.find(({ thing }) => thing.id === id)?.thing.sealed,
  ].includes(true);
  return { id, name: nameOwner(scene, id), sealed };
}

/** What is sealed leaves no gap. Where nothing is near there is none to judge. */
function judgeNarrowest({ plan }: Scene, [first, ...others]: readonly Gap[], subject: Subject): Measurement[] {
  const { id, name, sealed, path, mayMove = false } = subject;
  if (first === undefined) return [];
  const { edge, width, side, neighbour } = others.reduce((least, gap) => (isUnder(gap.width, least.width) ? gap : least), first);
  const rule = plan.codes.spacing === 'any' ? 'any' : 'all';
  const holdsIf = (isSealed: boolean) => judgeGap({ gapM: isSealed ? 0 : width / 1000, cleanable: false, sealed: isSealed }, rule).pass;
  const isTight = holdsIf(false);
  const value = isTight ? true : sealed === null ? null : holdsIf(sealed);
  const left: Left = { item: name, side, width, to: neighbour?.name ?? { kind: 'wall' } };
  return [
    {
      subjects: neighbour === undefined ? [id] : [id, neighbour.id],
      place: segmentPlace(edge),
      value,
      limit: true,
      ...(mayMove ? { severity: 'watch' as const } : {}),
      ...(value === null ? { ask: { input: say('gaps-cleanable/ask-sealed', { item: name }), path } } : {}),
      message: isTight ? say('gaps-cleanable/against', { item: name, to: left.to }) : sayLeft(left, value, mayMove),
    },
  ];
}

function sayLeft(left: Left, isClosed: boolean | null, mayRoll: boolean): Message {
  if (isClosed === null) return say('gaps-cleanable/unknown', left);
  return isClosed ? say('gaps-cleanable/sealed', left) : say('gaps-cleanable/open', { ...left, wanted: ROOM, mayRoll });
}
