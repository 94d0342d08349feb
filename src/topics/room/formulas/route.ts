import {
  createRefusal,
  type Entries,
  type FormulaSource,
  feet,
  inches,
  type Limit,
  limit,
  type RuleRecord,
  type Ruling,
  ruling,
} from '../../../rules';
import { isAtLeast, isAtMost, toSI } from '../../../units';

const ada = (section: string): FormulaSource => ({
  text: `ADA Standards ${section}, US Access Board guide`,
  documents: ['ada-standards'],
  confidence: 'read',
});

export const ROUTE_WIDTH: Limit = limit('route-width', 'Clear width of an accessible route', 'm', { min: inches(36) }, ada('403.5.1'));
export const DOOR_WIDTH: Limit = limit('accessible-door-width', 'Clear width of a door', 'm', { min: inches(32) }, ada('404.2.3'));
export const DOOR_HEIGHT: Limit = limit('accessible-door-height', 'Clear height of a door', 'm', { min: inches(80) }, ada('404.2.3'));
export const TURNING_CIRCLE: Limit = limit('turning-circle', 'Diameter of a turning circle', 'm', { min: inches(60) }, ada('304.3.1'));
export const EXIT_WIDTH: Limit = limit(
  'exit-width',
  'Width of an exit access',
  'm',
  { min: inches(28) },
  { text: '29 CFR 1910.36(g)(2); OSHA interpretation, 27 Nov 1978', documents: ['cfr-29-1910'], confidence: 'read' },
);
export const EXIT_HEIGHT: Limit = limit(
  'exit-height',
  'Ceiling of an exit route',
  'm',
  { min: feet(7.5) },
  { text: '29 CFR 1910.36(g)(1), quoted by a trade association', documents: ['cfr-29-1910'], confidence: 'secondary' },
);
export const EXIT_PROJECTION: Limit = limit(
  'exit-projection',
  'Free height under what projects into an exit route',
  'm',
  { min: inches(80) },
  { text: '29 CFR 1910.36(g)(1), quoted by a trade association: 6 ft 8 in', documents: ['cfr-29-1910'], confidence: 'secondary' },
);

/** The turning space in the form of a T: a square with two corners left out, arms and base of one width. */
export const TURNING_T = { squareM: inches(60), armM: inches(36), source: ada('304.3.2') } as const;

/** Free floor that one wheelchair takes. */
export const CLEAR_FLOOR = { widthM: inches(30), lengthM: inches(48), source: ada('305.3') } as const;

/** Free floor before a door for a front approach, where it is pulled open: how deep, and how far beside the latch. */
export const DOOR_PULL = {
  depthM: inches(60),
  besideM: inches(18),
  source: {
    text: 'ADA Standards 404.2.4.1, by notes on the Florida Building Code',
    documents: ['ada-standards'],
    confidence: 'secondary',
  } satisfies FormulaSource,
} as const;

/** The same where it is pushed open; what is beside the latch is asked of a door with a closer and a latch. */
export const DOOR_PUSH = {
  depthM: inches(48),
  besideM: inches(12),
  source: { text: 'ADA Standards 404.2.4.1', documents: ['ada-standards'], confidence: 'memory' } satisfies FormulaSource,
} as const;

/** Floor area in m² that such a T takes: the arm across, and the base below it. */
export const turningTArea = (): number => TURNING_T.squareM * TURNING_T.armM + TURNING_T.armM * (TURNING_T.squareM - TURNING_T.armM);

/** A piece of a way with one clear width. */
export interface Stretch {
  widthM: number;
  lengthM: number;
}

export const accessibleRouteRule: RuleRecord = {
  id: 'accessible-route',
  title: 'Accessible route',
  rule: 'At least 36 in wide; 32 in for at most 24 in of length, such places at least 48 in apart.',
  source: ROUTE_WIDTH.source,
};

/** Whether a way, piece after piece, is an accessible route. */
export function judgeAccessibleRoute(stretches: readonly Stretch[]): Ruling {
  let narrowM = 0;
  let sinceNarrowM = Number.POSITIVE_INFINITY;
  for (const { widthM, lengthM } of stretches) {
    if (isAtLeast(widthM, inches(36))) {
      sinceNarrowM = narrowM > 0 ? lengthM : sinceNarrowM + lengthM;
      narrowM = 0;
      continue;
    }
    if (!isAtLeast(widthM, inches(32))) return ruling(createRefusal(accessibleRouteRule, 'way-too-narrow', {}));
    if (narrowM === 0 && !isAtLeast(sinceNarrowM, inches(48)))
      return ruling(createRefusal(accessibleRouteRule, 'narrow-places-too-near', {}));
    narrowM += lengthM;
    if (!isAtMost(narrowM, inches(24))) return ruling(createRefusal(accessibleRouteRule, 'narrow-for-too-long', {}));
  }
  return ruling(null);
}

export const hairpinRule: RuleRecord = {
  id: 'turn-round-obstacle',
  title: 'Half turn round an obstacle',
  rule: 'Round something narrower than 48 in: 42 in before, 48 in at the turn, 42 in after; or 36, 60 and 36 in.',
  source: [ada('403.5.2')],
};

/** Whether a way that turns back round an obstacle is wide enough. */
export function judgeHalfTurn(obstacleM: number, beforeM: number, turnM: number, afterM: number): Ruling {
  if (isAtLeast(obstacleM, inches(48)))
    return judgeAccessibleRoute([beforeM, turnM, afterM].map((widthM) => ({ widthM, lengthM: inches(48) })));
  const least = Math.min(beforeM, afterM);
  const isWide = isAtLeast(least, inches(36)) && isAtLeast(turnM, inches(60));
  const isEven = isAtLeast(least, inches(42)) && isAtLeast(turnM, inches(48));
  return ruling(isWide || isEven ? null : createRefusal(hairpinRule, 'half-turn-too-narrow', {}));
}

export const routeExemptionRule: RuleRecord = {
  id: 'work-area-exemption',
  title: 'Work area without an accessible route inside',
  rule: 'A work area below 1000 ft² within fixed partitions, counters or casework needs none inside; its approach, entry and exit do.',
  source: [ada('206.2.8, exception 1')],
};

/** Whether the ways within a work area are exempt. The approach, the entry and a complying door are not. */
export function judgeRouteExemption(areaM2: number, boundsAreFixed: boolean): Ruling {
  if (!boundsAreFixed) return ruling(createRefusal(routeExemptionRule, 'bounds-movable', {}));
  return ruling(areaM2 < toSI(1000, 'ft2') * (1 - 1e-9) ? null : createRefusal(routeExemptionRule, 'area-too-large', {}));
}

/** What the manual shows of this file. */
export const entries: Entries = [
  { order: 570, group: 'people', limits: [EXIT_WIDTH, EXIT_HEIGHT, EXIT_PROJECTION, ROUTE_WIDTH, DOOR_WIDTH, DOOR_HEIGHT, TURNING_CIRCLE] },
  { order: 100, group: 'people', rules: [accessibleRouteRule, hairpinRule, routeExemptionRule] },
];
