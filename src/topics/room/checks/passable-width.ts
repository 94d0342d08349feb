import { createBody, directionTo, type Point, type Segment, scale, translate } from '../../../geometry';
import {
  areaPlace,
  type Check,
  createMessages,
  type Measurement,
  type NoParams,
  type Offer,
  type Repair,
  segmentPlace,
} from '../../../rules';
import { findWidestWay, floorObstacles, type Line, measureWay, type Scene, stepBack, type Way } from '../../../scene';
import { wayWidths } from '../formulas/support/wayWidths';
import { type Aisle, aisleSource, describeAisle, describePass, type Pass, passSource } from './support/aisles';
import { centrePinch } from './support/centrePinch';
import { createMove, findMove, moveId } from './support/freePlace';
import { describePinch, type Pinch, touchedAt } from './support/pinch';
import { ROOM_DOOR } from './support/roomDoor';

export const check: Check = {
  id: 'passable-width',
  order: 190,
  title: 'People reach the operator’s place',
  group: 'people',
  unit: 'mm',
  relation: 'at-least',
  source: { kind: 'published', document: '29 CFR', section: '1910.36(g)(2): 28 in at all points of an exit access', confidence: 'read' },
  why: 'The operator must come in and, in a fire, get out. 28 in count whatever the plan’s setting; a wider person and a wider aisle are settings of the plan. Below 36 in a person and a cart cannot share the aisle.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

/** What is said of the way to the operator's place. Lengths in mm. */
export interface PassableWidthMessages {
  'passable-width/no-door': NoParams;
  'passable-width/door-wide': { width: number; pass: Pass };
  'passable-width/door-narrow': { width: number; pass: Pass; missing: number };
  'passable-width/way-wide': { width: number };
  'passable-width/way-below-aisle': { width: number; pinch: Pinch; aisle: Aisle };
  'passable-width/way-narrow': { width: number; pinch: Pinch; pass: Pass };
}

const say = createMessages<PassableWidthMessages>();

/** Where no standing place was found there is no place to reach; the controls' own check says so. */
function measureLine(scene: Scene, line: Line): Measurement[] {
  if (line.stand === null) return [];
  const way = findWidestWay(scene, line, wayWidths(scene.plan.settings).enough);
  return way === null ? [askDoor(scene, line)] : [measureDoor(scene, line, way), measureAisle(scene, line, way)];
}

function askDoor({ plan }: Scene, { machine }: Line): Measurement {
  return {
    part: 'door',
    subjects: [machine.machine.id],
    place: areaPlace(machine.footprint),
    value: null,
    limit: wayWidths(plan.settings).pass,
    ask: { input: ROOM_DOOR, path: ['room', 'openings'] },
    message: say('passable-width/no-door'),
  };
}

function measureDoor({ plan }: Scene, { machine }: Line, { opening, door }: Way): Measurement {
  const { settings } = plan;
  const { pass: limit } = wayWidths(settings);
  return {
    part: 'door',
    subjects: [machine.machine.id],
    place: segmentPlace(opening.segment),
    value: door,
    limit,
    ...passSource(settings),
    message:
      door >= limit - 1e-6
        ? say('passable-width/door-wide', { width: door, pass: describePass(settings) })
        : say('passable-width/door-narrow', { width: door, pass: describePass(settings), missing: limit - door }),
  };
}

function measureAisle(scene: Scene, line: Line, way: Way): Measurement {
  const { opening, aisle } = way;
  const { settings } = scene.plan;
  const { pass, aisle: wanted, enough } = wayWidths(settings);
  const width = Math.min(aisle.width, enough);
  const isPassable = width >= pass - 1e-6;
  const isWide = isPassable && width >= wanted - 1e-6;
  const pinch = isWide ? null : centrePinch(scene, aisle.pinch);
  return {
    part: 'aisle',
    subjects: [line.machine.machine.id],
    place: segmentPlace(pinch ?? opening.segment),
    value: width,
    limit: pass,
    watchLimit: wanted,
    ...(isPassable ? (isWide ? {} : { source: aisleSource(settings) }) : passSource(settings)),
    message: isWide
      ? say('passable-width/way-wide', { width })
      : isPassable
        ? say('passable-width/way-below-aisle', { width, pinch: describePinch(scene, pinch), aisle: describeAisle(settings) })
        : say('passable-width/way-narrow', { width, pinch: describePinch(scene, pinch), pass: describePass(settings) }),
    ...(pinch === null ? {} : { repairs: offerToWiden(scene, line, way, pinch) }),
  };
}

function offerToWiden(scene: Scene, line: Line, way: Way, pinch: Segment): Offer {
  const owners = [pinch.a, pinch.b].flatMap((p) => touchedAt(scene, p)?.owner ?? []);
  return { ids: [...new Set(owners)].map(moveId), find: () => widen(scene, line, way, pinch) };
}

/** Moves what stands free at an end of the pinch, where the way is wider after it. */
function widen(scene: Scene, line: Line, way: Way, { a, b }: Segment): Repair[] {
  const ends = [
    { at: a, away: directionTo(b, a) },
    { at: b, away: directionTo(a, b) },
  ];
  return ends.flatMap(({ at, away }) => {
    const owner = touchedAt(scene, at)?.owner;
    const { aisle, pass } = wayWidths(scene.plan.settings);
    const ways = [Math.max(aisle, pass), pass]
      .filter((width) => width > way.aisle.width)
      .map((width) => scale(away, width - way.aisle.width));
    const move = owner === undefined ? null : findMove(scene, owner, ways);
    return owner === undefined || move === null || !isWider(scene, line, way, owner, move) ? [] : [createMove(scene, owner, move)];
  });
}

function isWider(scene: Scene, line: Line, { opening, aisle }: Way, owner: string, move: Point): boolean {
  const shifted = floorObstacles(scene).map((item) => (item.owner === owner ? createBody(translate(item.polygon, move)) : item.body));
  const to = line.stand === null ? null : stepBack(scene, line, line.stand, shifted);
  return to !== null && measureWay(scene.room, opening, shifted, to, wayWidths(scene.plan.settings).enough).aisle.width > aisle.width + 1;
}
