import { add, directionTo, type Point, type Segment, scale } from '../../geometry';
import { findWidestWay, floorObstacles, type Line, measureWay, type Scene, stepBack, type Way } from '../../scene';
import { centrePinch } from '../support/centrePinch';
import { createMove, findMove } from '../support/freePlace';
import { pinchWords, touchedAt } from '../support/pinchWords';
import { areaPlace, segmentPlace } from '../support/places';
import { sentence } from '../support/words';
import type { Check, Measurement, Repair, Source } from '../types';

/** Aisle between equipment: 36 in. Wider ways are not told apart. */
const AISLE = 914.4;

export const check: Check = {
  id: 'passable-width',
  title: 'People reach the operator’s place',
  group: 'people',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'published', document: '29 CFR', section: '1910.36(g)(2): 28 in at all points of an exit access', confidence: 'read' },
  why: 'The operator must come in and, in a fire, get out. The width is a setting of the plan; below 36 in a person and a cart cannot share the aisle.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

const AISLE_SOURCE: Source = {
  kind: 'published',
  document: 'FDA/CFP Food Establishment Plan Review Guide, 2000',
  section: 'Section III, Part 6: aisles of 36 in between equipment',
  confidence: 'read',
};

/** Where no standing place was found there is no place to reach; the controls' own check says so. */
function measureLine(scene: Scene, line: Line): Measurement[] {
  if (line.stand === null) return [];
  const way = findWidestWay(scene, line, wantedIn(scene));
  return way === null ? [askDoor(scene, line)] : [measureDoor(scene, line, way), measureAisle(scene, line, way)];
}

function askDoor({ plan }: Scene, { machine }: Line): Measurement {
  return {
    part: 'door',
    subjects: [machine.machine.id],
    place: areaPlace(machine.footprint),
    value: null,
    limit: plan.settings.personWidth,
    ask: { input: 'door of the room', path: ['room', 'openings'] },
    say: () => 'The room has no door that people walk through. Draw where they come in.',
  };
}

function measureDoor({ plan }: Scene, { machine }: Line, { opening, door }: Way): Measurement {
  const limit = plan.settings.personWidth;
  return {
    part: 'door',
    subjects: [machine.machine.id],
    place: segmentPlace(opening.segment),
    value: door,
    limit,
    say: (f) =>
      door >= limit - 1e-6
        ? `The door leaves ${f.length(door)} to pass; ${f.length(limit)} is needed.`
        : `The widest door leaves only ${f.length(door)} to pass; ${f.length(limit)} is needed. Widen it by ${f.length(limit - door)}.`,
  };
}

function measureAisle(scene: Scene, line: Line, way: Way): Measurement {
  const { opening, aisle } = way;
  const limit = scene.plan.settings.personWidth;
  const width = Math.min(aisle.width, wantedIn(scene));
  const isWide = width >= wantedIn(scene) - 1e-6;
  const pinch = isWide ? null : centrePinch(scene, aisle.pinch);
  return {
    part: 'aisle',
    subjects: [line.machine.machine.id],
    place: segmentPlace(pinch ?? opening.segment),
    value: width,
    limit,
    watchLimit: AISLE,
    ...(!isWide && width >= limit - 1e-6 ? { source: AISLE_SOURCE } : {}),
    say: (f) => {
      if (isWide) return `The way to the operator’s place is at least ${f.length(width)} wide.`;
      const narrows = sentence(`the way to the operator’s place narrows to ${f.length(width)}${pinchWords(scene, pinch)}`);
      return width < limit - 1e-6
        ? `${narrows}; ${f.length(limit)} is needed. Make room there.`
        : `${narrows}; ${f.length(AISLE)} is wanted in an aisle.`;
    },
    repairs: () => (pinch === null ? [] : widen(scene, line, way, pinch)),
  };
}

/** Moves what stands free at an end of the pinch, where the way is wider after it. */
function widen(scene: Scene, line: Line, way: Way, { a, b }: Segment): Repair[] {
  const ends = [
    { at: a, away: directionTo(b, a) },
    { at: b, away: directionTo(a, b) },
  ];
  return ends.flatMap(({ at, away }) => {
    const owner = touchedAt(scene, at)?.owner;
    const ways = [wantedIn(scene), scene.plan.settings.personWidth]
      .filter((width) => width > way.aisle.width)
      .map((width) => scale(away, width - way.aisle.width));
    const move = owner === undefined ? null : findMove(scene, owner, ways);
    return owner === undefined || move === null || !isWider(scene, line, way, owner, move) ? [] : [createMove(scene, owner, move)];
  });
}

function isWider(scene: Scene, line: Line, { opening, aisle }: Way, owner: string, move: Point): boolean {
  const shifted = floorObstacles(scene).map((item) => (item.owner === owner ? item.polygon.map((p) => add(p, move)) : item.polygon));
  const to = line.stand === null ? null : stepBack(scene, line, line.stand, shifted);
  return to !== null && measureWay(scene.room, opening, shifted, to, wantedIn(scene)).aisle.width > aisle.width + 1;
}

/** Ways wider than this are not told apart. */
const wantedIn = ({ plan }: Scene) => Math.max(plan.settings.personWidth, AISLE);
