import { distanceToOutline, type Passage, type Polygon, type Segment, solveWidestPassage } from '../../geometry';
import { floorObstacles, type Line, type PlacedOpening, type Scene } from '../../scene';
import { ownerName } from '../support/bodyNames';
import { openOutward } from '../support/doorway';
import { areaPlace, segmentPlace } from '../support/places';
import { stepBack } from '../support/stepBack';
import { list, sentence } from '../support/words';
import type { Check, Measurement, Source } from '../types';

/** Aisle between equipment: 36 in. */
const AISLE = 914.4;

export const check: Check = {
  id: 'passable-width',
  title: 'People reach the operator’s place',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'published', document: '29 CFR', section: '1910.36(g)(2): 28 in at all points of an exit access', confidence: 'read' },
  why: 'The operator must come in and, in a fire, get out. The width is a setting of the plan; below 36 in a cart and a person cannot share the aisle.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

const AISLE_SOURCE: Source = {
  kind: 'published',
  document: 'FDA/CFP Food Establishment Plan Review Guide, 2000',
  section: 'Section III, Part 6: aisles of 36 in between equipment',
  confidence: 'read',
};

/** The widest way in, and the opening that it begins at. */
interface Way extends Passage {
  opening: PlacedOpening;
}

function measureLine(scene: Scene, line: Line): Measurement[] {
  if (line.stand === null) return [];
  const limit = scene.plan.settings.personWidth;
  const machine = line.machine.machine.id;
  const way = findWidest(scene, line, line.stand);
  if (way === null) return [askDoor(line, machine, limit)];
  const isNarrow = way.width < limit - 1e-6;
  return [
    {
      subjects: [machine],
      place: way.pinch === null ? areaPlace(line.machine.footprint) : segmentPlace(way.pinch),
      value: way.width,
      limit,
      watchLimit: AISLE,
      ...(way.width < AISLE && !isNarrow ? { source: AISLE_SOURCE } : {}),
      say: (f) => {
        const narrows = `the way to the operator’s place narrows to ${f.length(way.width)} ${whereWords(scene, way)}`;
        if (way.width >= AISLE - 1e-6) return sentence(`the way to the operator’s place is nowhere less than ${f.length(way.width)}.`);
        return sentence(
          isNarrow ? `${narrows}; ${f.length(limit)} is needed. Make room there.` : `${narrows}; ${f.length(AISLE)} is wanted in an aisle.`,
        );
      },
    },
  ];
}

const askDoor = (line: Line, machine: string, limit: number): Measurement => ({
  subjects: [machine],
  place: areaPlace(line.machine.footprint),
  value: null,
  limit,
  ask: { input: 'door of the room', path: ['room', 'openings'] },
  say: () => 'The room has no door that people walk through. Draw where they come in.',
});

/** The best of all doors and cased openings. A leaf is no obstacle: it opens. */
function findWidest(scene: Scene, line: Line, stand: NonNullable<Line['stand']>): Way | null {
  const obstacles = floorObstacles(scene).map(({ polygon }) => polygon);
  const to = stepBack(scene, line, stand, obstacles);
  let widest: Way | null = null;
  for (const opening of scene.room.openings) {
    if (!opening.isWay) continue;
    const { room, from } = openOutward(scene.room.outline, opening);
    const passage = solveWidestPassage(room, obstacles, from, to);
    if (widest === null || passage.width > widest.width) widest = { ...passage, opening };
  }
  return widest;
}

/** What stands at both ends of the pinch. */
function whereWords(scene: Scene, { pinch, opening }: Way): string {
  if (pinch === null || isAtDoor(pinch, opening)) return 'at the door';
  const names = [...new Set([pinch.a, pinch.b].map((p) => nameAt(scene, p)))];
  return names.length === 1 && names[0] === 'the wall' ? 'between the walls' : `between ${list(names)}`;
}

const isAtDoor = (pinch: Segment, { segment }: PlacedOpening) =>
  [pinch.a, pinch.b].every((p) => distanceToOutline([segment.a, segment.b], p) < 1);

function nameAt(scene: Scene, p: { x: number; y: number }): string {
  const touched = floorObstacles(scene).find(({ polygon }: { polygon: Polygon }) => distanceToOutline(polygon, p) < 1);
  return touched === undefined ? 'the wall' : ownerName(scene, touched.owner);
}
