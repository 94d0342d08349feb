import {
  areaPlace,
  type Check,
  createMessages,
  type FigureReading,
  lengthOf,
  type Measurement,
  type Message,
  type NoParams,
  pointPlace,
  readFigure,
  type Source,
} from '../../../rules';
import type { Line, Scene } from '../../../scene';
import { CLEAR_FLOOR, judgeRouteExemption, ROUTE_WIDTH, routeExemptionRule } from '../../room';
import { rule as stationWayWidthFigure } from '../figures/station-way-width';
import { hasClearFloor, type Turning } from '../figures/support/turning';
import { rule as turningSpaceFigure } from '../figures/turning-space';
import { rule as wayWidthFigure } from '../figures/way-width';

const WIDTH = lengthOf(ROUTE_WIDTH);
/** For at most 24 in of way: ADA Standards 403.5.1. */
const PINCH = 812.8;
const PINCH_LENGTH = 609.6;

export const check: Check = {
  id: 'accessible-approach',
  order: 740,
  title: 'The room is accessible as far as it must be',
  group: 'people',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'ADA Standards',
    section: '206.2.8, exception 1, and 403.5.1, US Access Board guide',
    confidence: 'read',
  },
  why: `${routeExemptionRule.rule} A turning space is not asked in a work room. Where work itself needs it, a way may be narrower (403.5).`,
  measure: (scene) => (scene.lines.length === 0 ? [] : [measureRoom(scene), ...scene.lines.flatMap((line) => measureSpace(scene, line))]),
};

/** What is said of how accessible the room is. Lengths in mm. */
export interface AccessibleApproachMessages {
  'accessible-approach/walls-unknown': { areaMm2: number };
  'accessible-approach/ask-walls': NoParams;
  'accessible-approach/exempt': { areaMm2: number };
  'accessible-approach/no-way-in': NoParams;
  'accessible-approach/ways-wide': NotExempt;
  'accessible-approach/ways-pinched': NotExempt & { width: number; mostLong: number };
  'accessible-approach/ways-narrow': NotExempt & { width: number };
  /** `turns`: the shape of floor in which a wheelchair turns there; null where none is free. */
  'accessible-approach/space': Space & { turns: Turning['kind'] | null };
  'accessible-approach/no-space': Space;
}

interface NotExempt {
  areaMm2: number;
  isMovable: boolean;
  needed: number;
}

/** `near`: how far from the operator's place at most. */
interface Space {
  width: number;
  length: number;
  near: number;
}

const say = createMessages<AccessibleApproachMessages>();

/** An exempt room holds; else the narrowest of its ways is held against the accessible route. Doors have a check of their own. */
function measureRoom(scene: Scene): Measurement {
  const { finish } = scene.plan;
  const { areaMm2 } = scene.room;
  const areaM2 = areaMm2 / 1e6;
  const common = { subjects: [], place: areaPlace(scene.room.outline), limit: WIDTH };
  // A room too large is not exempt, whatever bounds it.
  const isSmall = judgeRouteExemption(areaM2, true).pass;
  if (isSmall && finish.fixedWalls === null) {
    const ask = { input: say('accessible-approach/ask-walls'), path: ['finish', 'fixedWalls'] };
    return { value: null, ask, message: say('accessible-approach/walls-unknown', { areaMm2 }), ...common };
  }
  if (judgeRouteExemption(areaM2, finish.fixedWalls === true).pass) {
    return {
      value: true,
      relation: 'equals',
      unit: 'yes-no',
      message: say('accessible-approach/exempt', { areaMm2 }),
      ...common,
      limit: true,
    };
  }
  return measureWays(scene, common);
}

function measureWays(scene: Scene, common: Pick<Measurement, 'subjects' | 'place' | 'limit'>): Measurement {
  const ways = [...readFigure(wayWidthFigure, scene), ...readFigure(stationWayWidthFigure, scene)].filter(
    ({ part }) => part !== 'beside-carts' && part !== 'door',
  );
  const unknown = ways.find(({ value }) => value === null);
  if (unknown?.ask !== undefined) return { value: null, ask: unknown.ask, message: say('accessible-approach/no-way-in'), ...common };
  const widthMm = Math.min(...ways.map((reading: FigureReading) => (reading.value ?? 0) * 1000));
  return {
    ...common,
    value: Number.isFinite(widthMm) ? widthMm : 0,
    // A short pinch may have 32 in; how long it is is not measured here.
    ...(widthMm >= PINCH - 1e-6 && widthMm < WIDTH - 1e-6 ? { severity: 'watch' as const } : {}),
    message: sayWays(scene, widthMm),
  };
}

function sayWays({ room, plan }: Scene, width: number): Message {
  const reason: NotExempt = { areaMm2: room.areaMm2, isMovable: plan.finish.fixedWalls === false, needed: WIDTH };
  if (width >= WIDTH - 1e-6) return say('accessible-approach/ways-wide', reason);
  return width >= PINCH - 1e-6
    ? say('accessible-approach/ways-pinched', { ...reason, width, mostLong: PINCH_LENGTH })
    : say('accessible-approach/ways-narrow', { ...reason, width });
}

const SPACE_SOURCE: Source = {
  kind: 'published',
  document: 'ADA Standards',
  section: '203.9, 304.3 and 305.3, US Access Board guide: a wheelchair space of 30 by 48 in within the work area, whatever else is exempt',
  confidence: 'read',
};

function measureSpace(scene: Scene, line: Line): Measurement[] {
  const { stand, machine } = line;
  if (stand === null) return [];
  const isFree = hasClearFloor(scene, line);
  return [
    {
      part: 'space',
      subjects: [machine.machine.id],
      place: pointPlace(stand.centre),
      unit: 'yes-no',
      relation: 'equals',
      value: isFree,
      limit: true,
      severity: 'watch',
      source: SPACE_SOURCE,
      message: isFree
        ? say('accessible-approach/space', { ...SPACE, turns: turningAt(scene, machine.machine.id) })
        : say('accessible-approach/no-space', SPACE),
    },
  ];
}

/** 5 ft: as far as a turning space is looked for. */
const NEAR = 1524;
const SPACE: Space = { width: CLEAR_FLOOR.widthM * 1000, length: CLEAR_FLOOR.lengthM * 1000, near: NEAR };

function turningAt(scene: Scene, machine: string): Turning['kind'] | null {
  const turning = readFigure(turningSpaceFigure, scene).find(({ subjects, value }) => subjects[0] === machine && value !== null);
  if (turning === undefined) return null;
  return turning.part === 'circle' ? 'circle' : 't-shape';
}
