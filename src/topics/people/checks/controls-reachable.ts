import {
  areaPlace,
  type Check,
  createMessages,
  holdsAtLeast as isAtLeast,
  holdsAtMost as isAtMost,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameTable,
  type Offer,
  pointPlace,
  type Source,
  segmentPlace,
} from '../../../rules';
import type { Line, PlacedControls, Scene } from '../../../scene';
import { measureCover, moveControls, SHORT_REACH } from '../../line';
import { BODIES } from '../formulas/support/bodies';

const FREE: Source = { kind: 'common-practice', text: 'No table lies over the place where a person reaches for the controls.' };

export const check: Check = {
  id: 'controls-reachable',
  order: 60,
  title: 'Controls can be reached',
  group: 'people',
  unit: 'mm',
  relation: 'at-most',
  source: {
    kind: 'published',
    document: 'NUREG-0700 Rev. 3, from MIL-STD-1472G Appendix B',
    section: 'Table 11.4, functional reach of the 5th-percentile woman',
    confidence: 'read',
  },
  why: 'Whoever works the line starts, stops and reads the machine all day; controls under a table or out of reach stay unused.',
  measure: (scene) => scene.lines.flatMap((line) => measureLine(scene, line)),
};

/** What is said of the controls. Lengths in mm. */
export interface ControlsReachableMessages {
  'controls-reachable/free': NoParams;
  'controls-reachable/covered': { table: Name };
  'controls-reachable/partly-covered': { table: Name; covered: number; width: number };
  'controls-reachable/no-stand': NoParams;
  'controls-reachable/near': { reach: number; most: number };
  'controls-reachable/far': { reach: number; most: number };
  'controls-reachable/at-good-height': { height: number };
  'controls-reachable/low': { height: number; fingertips: number };
  'controls-reachable/high': { height: number; highest: number };
}

const say = createMessages<ControlsReachableMessages>();

function measureLine(scene: Scene, line: Line): Measurement[] {
  const { controls } = line.machine;
  if (line.inside === null || controls === null) return [];
  const free = measureFree(scene, line, controls);
  // Under a table no place to stand would help: one finding says it.
  return free.severity === 'stop' && free.value !== 0
    ? [free]
    : [free, measureStand(scene, line, controls), ...measureHeight(line, controls)];
}

/** Decks over the place before the controls. Less than half of them covered is a watch. */
function measureFree(scene: Scene, line: Line, controls: PlacedControls): Measurement {
  const covers = scene.tables.map((table) => ({ table, by: measureCover(table, line.machine, controls) }));
  const worst = covers.toSorted((a, b) => b.by - a.by)[0];
  const by = worst?.by ?? 0;
  const width = widthOf(controls);
  const isFree = worst === undefined || by === 0;
  return {
    place: areaPlace(controls.reachZone),
    value: by,
    limit: 0,
    severity: by < width / 2 ? 'watch' : 'stop',
    source: FREE,
    message: isFree ? say('controls-reachable/free') : sayCovered(nameTable(scene, worst.table), by, width),
    ...(isFree ? {} : { repairs: offerToMove(scene, line) }),
    ...about(line, 'cover'),
  };
}

const sayCovered = (table: Name, covered: number, width: number): Message =>
  isAtLeast(covered, width)
    ? say('controls-reachable/covered', { table })
    : say('controls-reachable/partly-covered', { table, covered, width });

/** To every other place that the data sheet has for them. */
const offerToMove = (scene: Scene, line: Line): Offer => ({
  ids: line.machine.sheet.controls.filter(({ id }) => id !== line.machine.machine.controls).map(({ id }) => `controls-${id}`),
  find: () => moveControls(scene, line),
});

const widthOf = ({ face: { a, b } }: PlacedControls) => Math.hypot(b.x - a.x, b.y - a.y);

function measureStand(scene: Scene, line: Line, controls: PlacedControls): Measurement {
  const { stand } = line;
  if (stand === null) {
    return {
      place: segmentPlace(controls.face),
      unit: 'yes-no',
      relation: 'equals',
      value: false,
      limit: true,
      message: say('controls-reachable/no-stand'),
      repairs: offerToMove(scene, line),
      ...about(line, 'stand'),
    };
  }
  const isNear = isAtMost(stand.reach, SHORT_REACH);
  return {
    place: pointPlace(stand.centre),
    value: stand.reach,
    limit: SHORT_REACH,
    message: say(isNear ? 'controls-reachable/near' : 'controls-reachable/far', { reach: stand.reach, most: SHORT_REACH }),
    ...(isNear ? {} : { repairs: offerToMove(scene, line) }),
    ...about(line, 'stand'),
  };
}

const mm = (metres: number) => metres * 1000;
/** A short person's shoulder, from which she reaches, and where a tall person's fingers hang without stooping. */
const [SHOULDER, FINGERTIPS] = [mm(BODIES['small-woman'].shoulderM), mm(BODIES['tall-man'].fingertipM)];

/**
 * The part of the controls that is nearest to a short person's shoulder: not above what she reaches from where she stands, nor below the
 * hands of a tall person who stands upright. Where she does not reach so far at all, that is said already.
 */
function measureHeight(line: Line, controls: PlacedControls): Measurement[] {
  const { zFrom, zTo } = controls.position;
  const away = line.stand?.reach ?? Number.POSITIVE_INFINITY;
  if (!isAtMost(away, SHORT_REACH)) return [];
  const height = Math.max(zFrom, Math.min(zTo, SHOULDER));
  const highest = SHOULDER + Math.sqrt(Math.max(0, SHORT_REACH ** 2 - away ** 2));
  const isLow = height < SHOULDER;
  const isReached = isLow ? isAtLeast(height, FINGERTIPS) : isAtMost(height, highest);
  const limit = isLow ? FINGERTIPS : highest;
  return [
    {
      place: segmentPlace(controls.face),
      relation: isLow ? 'at-least' : 'at-most',
      value: height,
      limit,
      severity: 'watch',
      source: HEIGHT,
      message: isReached
        ? say('controls-reachable/at-good-height', { height })
        : isLow
          ? say('controls-reachable/low', { height, fingertips: limit })
          : say('controls-reachable/high', { height, highest: limit }),
      ...about(line, 'height'),
    },
  ];
}

const HEIGHT: Source = {
  kind: 'published',
  document: 'NUREG-0700 Rev. 3, from MIL-STD-1472G Appendix B',
  section: 'Table 11.4: shoulder and reach of the 5th-percentile woman, fingertips of the 95th-percentile man',
  confidence: 'read',
};

const about = (line: Line, part: string) => ({ part, subjects: [line.machine.machine.id] });
