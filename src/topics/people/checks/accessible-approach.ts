import { areaPlace, type Check, type FigureReading, lengthOf, type Measurement, pointPlace, readFigure, type Source } from '../../../rules';
import type { Line, Scene } from '../../../scene';
import { CLEAR_FLOOR, judgeRouteExemption, ROUTE_WIDTH, routeExemptionRule } from '../../room';
import { rule as stationWayWidthFigure } from '../figures/station-way-width';
import { hasClearFloor } from '../figures/support/turning';
import { rule as turningSpaceFigure } from '../figures/turning-space';
import { rule as wayWidthFigure } from '../figures/way-width';

const WIDTH = lengthOf(ROUTE_WIDTH);
/** For at most 24 in of way: ADA Standards 403.5.1. */
const PINCH = 812.8;

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

/** An exempt room holds; else the narrowest of its ways is held against the accessible route. Doors have a check of their own. */
function measureRoom(scene: Scene): Measurement {
  const { finish } = scene.plan;
  const areaM2 = scene.room.areaMm2 / 1e6;
  const common = { subjects: [], place: areaPlace(scene.room.outline), limit: WIDTH };
  // A room too large is not exempt, whatever bounds it.
  const isSmall = judgeRouteExemption(areaM2, true).pass;
  if (isSmall && finish.fixedWalls === null) {
    const ask = { input: 'walls: fixed all around or not', path: ['finish', 'fixedWalls'] };
    return {
      value: null,
      ask,
      say: (f) => `The room has ${f.area(scene.room.areaMm2)}. Say whether what bounds it is fixed: then its ways are exempt.`,
      ...common,
    };
  }
  if (judgeRouteExemption(areaM2, finish.fixedWalls === true).pass) {
    return {
      value: true,
      relation: 'equals',
      unit: 'yes-no',
      say: (f) => `With ${f.area(scene.room.areaMm2)} within fixed walls the ways inside are exempt; the approach and a door must comply.`,
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
  if (unknown?.ask !== undefined)
    return { value: null, ask: unknown.ask, say: () => 'Draw where people come in: the ways inside must be accessible.', ...common };
  const widthMm = Math.min(...ways.map((reading: FigureReading) => (reading.value ?? 0) * 1000));
  return {
    ...common,
    value: Number.isFinite(widthMm) ? widthMm : 0,
    // A short pinch may have 32 in; how long it is is not measured here.
    ...(widthMm >= PINCH - 1e-6 && widthMm < WIDTH - 1e-6 ? { severity: 'watch' as const } : {}),
    say: (f) => {
      const reason = `The room is not exempt: it has ${f.area(scene.room.areaMm2)}${scene.plan.finish.fixedWalls === false ? ' and its bounds can be moved' : ''}.`;
      if (widthMm >= WIDTH - 1e-6) return `${reason} Its ways are ${f.length(WIDTH)} wide or wider.`;
      if (widthMm >= PINCH - 1e-6)
        return `${reason} Its narrowest way has ${f.length(widthMm)}; under ${f.length(WIDTH)} it may be ${f.length(609.6)} long. Measure how long it is.`;
      return `${reason} Its narrowest way has ${f.length(widthMm)}; ${f.length(WIDTH)} is needed. Make room, or see whether the work itself needs it so.`;
    },
  };
}

const SPACE_SOURCE: Source = {
  kind: 'published',
  document: 'ADA Standards',
  section: '203.9, 304.3 and 305.3, US Access Board guide: a wheelchair space of 30 by 48 in within the work area, whatever else is exempt',
  confidence: 'read',
};

/** Whether it also turns there is only looked at where the sentence is read. */
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
      say: (f) => {
        const floor = `${f.length(CLEAR_FLOOR.widthM * 1000)} by ${f.length(CLEAR_FLOOR.lengthM * 1000)}`;
        const near = `within ${f.length(NEAR)} of the operator’s place`;
        return isFree
          ? `A wheelchair stands on ${floor} ${near}, and ${turningWords(scene, machine.machine.id)}.`
          : `No free floor of ${floor}, which a wheelchair takes, is left ${near}. Clear a place: a work area must have one.`;
      },
    },
  ];
}

/** 5 ft: as far as a turning space is looked for. */
const NEAR = 1524;

function turningWords(scene: Scene, machine: string): string {
  const turning = readFigure(turningSpaceFigure, scene).find(({ subjects, value }) => subjects[0] === machine && value !== null);
  if (turning === undefined) return 'no circle or T to turn in is free there, which a work room need not have';
  return turning.part === 'circle' ? 'turns in a circle of 60 in' : 'turns in a T of arms 36 in wide';
}
