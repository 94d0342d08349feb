import { type Check, type Measurement, segmentPlace, sentence, tableName } from '../../checks';
import { CLEANING_ROOM, judgeGap } from '../../engineering';
import { directionTo, distance, leftOf, rightOf, type Segment } from '../../geometry';
import { pathOf } from '../../plan';
import { measureWalls, type PlacedTable, type Scene } from '../../scene';
import { lengthOf } from '../support/limitOf';

/** Room that one city takes as enough to clean in. */
const ROOM = lengthOf(CLEANING_ROOM);
/** How far a table may be drawn into its wall and still stand at it. */
const INTO = 50;

export const check: Check = {
  id: 'gaps-cleanable',
  title: 'Gaps behind the tables are closed, or wide enough to clean',
  group: 'sanitary',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-402.11, as WAC 246-215-04405: room to clean, or a gap of at most 1/32 in, or sealed where it is splashed',
    confidence: 'read',
  },
  why: 'A gap that no hand comes into is where soil and vermin stay. How wide is wide enough the code leaves open; one city says 14 in. Pennsylvania wants a gap both closed and sealed.',
  measure: (scene) => scene.tables.flatMap((table) => measureTable(scene, table)),
};

/** The narrowest gap between the back edge and a wall; where no wall is near there is none. */
function measureTable(scene: Scene, placed: PlacedTable): Measurement[] {
  const gaps = backEdges(placed).flatMap(({ a, b, out }) => {
    const gap = measureWalls({ a, b }, out, scene.room.walls, ROOM, INTO).distance;
    return gap === null || gap >= ROOM ? [] : [{ edge: { a, b }, gap: Math.max(0, gap) }];
  });
  const [first, ...others] = gaps;
  if (first === undefined) return [];
  const { edge, gap } = others.reduce((least, item) => (item.gap < least.gap ? item : least), first);
  const { id, make } = placed.table;
  const isTight = judgeGap({ gapM: gap / 1000, cleanable: false, sealed: false }, 'any').pass;
  const holds = isTight || make.sealed === true;
  const isUnknown = !isTight && make.sealed === null;
  const name = tableName(scene, placed);
  return [
    {
      subjects: [id],
      place: segmentPlace(edge),
      value: isUnknown ? null : holds,
      limit: true,
      ...(isUnknown
        ? { ask: { input: 'joints of the table: sealed or not', path: pathOf(scene.plan, 'tables', id, 'make', 'sealed') } }
        : {}),
      say: (f) => {
        const gapWords = `behind ${name} a gap of ${f.length(gap)} is left to the wall`;
        if (isUnknown) return sentence(`${gapWords}. Say whether it is sealed.`);
        if (isTight) return sentence(`${name} stands against the wall.`);
        return sentence(
          holds ? `${gapWords}, sealed.` : `${gapWords}: too little to clean, and not sealed. Seal it, or leave ${f.length(ROOM)}.`,
        );
      },
    },
  ];
}

function backEdges({ table, backEdge }: PlacedTable): (Segment & { out: { x: number; y: number } })[] {
  return backEdge.slice(1).flatMap((b, i) => {
    const a = backEdge[i];
    if (a === undefined || distance(a, b) < 1) return [];
    const heading = directionTo(a, b);
    return [{ a, b, out: table.operatorSide === 'left' ? rightOf(heading) : leftOf(heading) }];
  });
}
