import { type Check, type Measurement, machineName, segmentPlace, sentence, tableName } from '../../checks';
import { CLEANING_ROOM, CLEANING_ROOM_NARROW, judgeGap } from '../../engineering';
import { directionTo, distance, leftOf, type Point, rightOf, type Segment } from '../../geometry';
import { pathOf } from '../../plan';
import { measureWalls, type PlacedMachine, type PlacedSide, type PlacedTable, type Scene } from '../../scene';
import { isUnder } from '../support/compare';
import { lengthOf } from '../support/limitOf';

/** Room that one city takes as enough to clean in; and the narrower one, of what is short and stands free. */
const ROOM = lengthOf(CLEANING_ROOM);
const NARROW = lengthOf(CLEANING_ROOM_NARROW);
/** Equipment shorter than this is short for that city: 60 in. */
const SHORT = 1524;
/** How far a table may be drawn into its wall and still stand at it. */
const INTO = 50;

export const check: Check = {
  id: 'gaps-cleanable',
  title: 'Gaps behind tables and machines are closed, or wide enough to clean',
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
  why: 'A gap that no hand comes into is where soil and vermin stay. How wide is wide enough the code leaves open; one city says 14 in from the wall, and of what stands free and is shorter than 60 in, 14 in at both sides with 6 in behind, or 6 in with 14 in. Where codes differ, the plan says which counts; the strictest has every narrow gap sealed, however small.',
  measure: (scene) => [
    ...scene.tables.flatMap((table) => measureTable(scene, table)),
    ...scene.machines.flatMap((machine) => measureMachine(scene, machine)),
  ],
};

interface Gap {
  edge: Segment;
  width: number;
  /** `behind the soiled table`. */
  where: string;
}

/** What is narrow there, and what is known of its sealing. */
interface Subject {
  id: string;
  name: string;
  sealed: boolean | null;
  path: (string | number)[];
}

function measureTable(scene: Scene, placed: PlacedTable): Measurement[] {
  const { id, make } = placed.table;
  const name = tableName(scene, placed);
  const gaps = backEdges(placed).flatMap(({ a, b, out }): Gap[] => {
    const width = measureWalls({ a, b }, out, scene.room.walls, ROOM, INTO).distance;
    return width === null || !isUnder(width, ROOM) ? [] : [{ edge: { a, b }, width: Math.max(0, width), where: `behind ${name}` }];
  });
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

/** Its back, and the sides that no table is joined to. People stand before its front. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { id, hookUp } = placed.machine;
  const name = machineName(scene, placed);
  const { left, right, back } = placed.sides;
  if (isFreeToClean(placed)) return [];
  const gaps = [left, right, back].flatMap((side): Gap[] => {
    if (side.table !== null || !isUnder(roomAt(side), ROOM)) return [];
    const where = side.side === 'back' ? `behind ${name}` : `at the ${side.side} of ${name}`;
    return [{ edge: side.edge, width: Math.max(0, roomAt(side)), where }];
  });
  const path = pathOf(scene.plan, 'machines', id, 'hookUp', 'sealed');
  return judgeNarrowest(scene, gaps, { id, name, sealed: hookUp.sealed, path });
}

const roomAt = ({ wallDistance }: PlacedSide) => wallDistance ?? Number.POSITIVE_INFINITY;

/** On legs, shorter than 60 in, with no table: as that city prints it, 14 in at both sides and 6 in behind, or the other way about. */
function isFreeToClean({ sheet, machine, sides }: PlacedMachine): boolean {
  const { left, right, back } = sides;
  const isFree = Object.values(sides).every(({ table }) => table === null) && (machine.hookUp.clearBelow ?? 0) > 0;
  if (!isFree || !isUnder(sheet.width, SHORT)) return false;
  const beside = Math.min(roomAt(left), roomAt(right));
  const has = (atSides: number, behind: number) => !isUnder(beside, atSides) && !isUnder(roomAt(back), behind);
  return has(ROOM, NARROW) || has(NARROW, ROOM);
}

/** What is sealed leaves no gap. Where no wall is near there is none to judge. */
function judgeNarrowest({ plan }: Scene, [first, ...others]: readonly Gap[], { id, name, sealed, path }: Subject): Measurement[] {
  if (first === undefined) return [];
  const { edge, width, where } = others.reduce((least, gap) => (isUnder(gap.width, least.width) ? gap : least), first);
  const rule = plan.codes.spacing === 'any' ? 'any' : 'all';
  const holdsIf = (isSealed: boolean) => judgeGap({ gapM: isSealed ? 0 : width / 1000, cleanable: false, sealed: isSealed }, rule).pass;
  const isTight = holdsIf(false);
  const value = isTight ? true : sealed === null ? null : holdsIf(sealed);
  return [
    {
      subjects: [id],
      place: segmentPlace(edge),
      value,
      limit: true,
      ...(value === null ? { ask: { input: `joints of ${name}: sealed or not`, path } } : {}),
      say: (f) => {
        if (isTight) return sentence(`${name} stands against the wall.`);
        const left = `${where} a gap of ${f.length(width)} is left to the wall`;
        if (value === null) return sentence(`${left}. Say whether it is sealed.`);
        if (value) return sentence(`${left}, sealed.`);
        return sentence(`${left}: too little to clean, and not sealed. Seal it, or leave ${f.length(ROOM)}.`);
      },
    },
  ];
}
