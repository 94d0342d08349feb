import {
  areaPlace,
  type Check,
  holdsAtLeast as isAtLeast,
  holdsAtMost as isAtMost,
  type Measurement,
  pointPlace,
  type Source,
  segmentPlace,
  sentence,
  tableName,
} from '../../../rules';
import type { Line, PlacedControls, Scene } from '../../../scene';
import type { Formatter } from '../../../units';
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
    say: (f) => (isFree ? 'No table lies before the controls.' : sentence(describeCover(tableName(scene, worst.table), by, width, f))),
    repairs: () => (isFree ? [] : moveControls(scene, line)),
    ...about(line, 'cover'),
  };
}

function describeCover(table: string, by: number, width: number, f: Formatter): string {
  if (isAtLeast(by, width)) return `${table} lies over the controls; nobody can work them there. Move the controls.`;
  return `${table} lies over ${f.length(by)} of the controls’ ${f.length(width)}. Move the table or the controls.`;
}

const widthOf = ({ face: { a, b } }: PlacedControls) => Math.hypot(b.x - a.x, b.y - a.y);

function measureStand(scene: Scene, line: Line, controls: PlacedControls): Measurement {
  const { stand } = line;
  if (stand === null) {
    const say = () => 'There is no free place to stand inside the turn near the controls. Clear the floor before them.';
    const place = segmentPlace(controls.face);
    return {
      place,
      unit: 'yes-no',
      relation: 'equals',
      value: false,
      limit: true,
      say,
      repairs: () => moveControls(scene, line),
      ...about(line, 'stand'),
    };
  }
  const isNear = isAtMost(stand.reach, SHORT_REACH);
  return {
    place: pointPlace(stand.centre),
    value: stand.reach,
    limit: SHORT_REACH,
    say: (f) =>
      isNear
        ? `The controls are ${f.length(stand.reach)} from where the operator stands; a short person reaches ${f.length(SHORT_REACH)}.`
        : `The controls are ${f.length(stand.reach)} from where the operator can stand; a short person reaches ${f.length(SHORT_REACH)}. Clear a place nearer to them.`,
    repairs: () => (isNear ? [] : moveControls(scene, line)),
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
      say: (f) => {
        if (isReached) return `The controls are reached ${f.length(height)} above the floor, without stooping or climbing.`;
        return isLow
          ? `The controls end ${f.length(height)} above the floor; the fingers of a tall person hang at ${f.length(limit)}, so they are worked stooping. Have them fitted higher.`
          : `The controls begin ${f.length(height)} above the floor; from where the operator stands a short person reaches up to ${f.length(limit)}. Have them fitted lower, or give a sound step.`;
      },
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
