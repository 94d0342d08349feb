import { type Drawing, drawDimensions, drawElevation, drawFindings, drawPlan } from '../drawing';
import type { Finding } from '../rules';
import type { Scene } from '../scene';
import type { Units } from '../units';
import type { Area } from './area';
import { HEADING_HEIGHT } from './block';
import { type FittedDrawing, fitDrawing } from './fitDrawing';
import { GAP } from './layOut';
import { usualScales } from './scales';

/** The plan and, where it finds room, the unrolled line: each with its scale, and the area that each has. */
export interface FittedSheet {
  plan: FittedDrawing;
  planArea: Area;
  elevation: FittedDrawing | null;
  elevationArea: Area;
}

export interface SheetRoom {
  /** For the plan, and below it the unrolled line. */
  plan: Area;
  /** What the words leave below them: another place for the unrolled line. */
  rest: Area;
}

/** The usual scale of a plan (¼ in to the foot, 1 : 50): a larger one gives way to it for the sake of the unrolled line. */
const PLAN_SCALE: Record<Units, number> = { us: 48, metric: 50 };
/** Smaller than this the unrolled line tells nothing. */
const SMALLEST_ELEVATION = 64;
/** Scales smaller than any usual one, for a room that would not fit otherwise. */
const LAST_RESORT = [1000, 2000, 5000, 10_000, 50_000];

/** Finds the scales of a sheet. `asked`: a plan scale to take if it fits, or null. */
export function fitSheet(scene: Scene, findings: readonly Finding[], units: Units, asked: number | null, room: SheetRoom): FittedSheet {
  let first: FittedSheet | null = null;
  for (const scale of [...(asked === null ? [] : [asked]), ...usualScales(units), ...LAST_RESORT]) {
    const plan = fitDrawing((n) => drawWholePlan(scene, findings, units, n), [scale], room.plan.width, room.plan.height);
    if (plan === null) continue;
    const sheet = addElevation(scene, units, plan, room);
    first ??= sheet;
    if (sheet.elevation !== null) return sheet;
    if (scale === asked || scale >= PLAN_SCALE[units]) break;
  }
  return first ?? { plan: NOTHING, planArea: room.plan, elevation: null, elevationArea: room.rest };
}

const NOTHING: FittedDrawing = { drawing: [], scaleDenominator: 1, bounds: { minX: 0, minY: 0, maxX: 0, maxY: 0 } };

function drawWholePlan(scene: Scene, findings: readonly Finding[], units: Units, scaleDenominator: number): Drawing {
  const options = { units, scaleDenominator };
  return [...drawPlan(scene, options), ...drawDimensions(scene, options), ...drawFindings(scene, findings, options)];
}

/** The unrolled line below the plan or below the words, where it comes out larger. */
function addElevation(scene: Scene, units: Units, plan: FittedDrawing, { plan: area, rest }: SheetRoom): FittedSheet {
  const planHeight = (plan.bounds.maxY - plan.bounds.minY) / plan.scaleDenominator;
  const below = { ...area, y: area.y + planHeight + GAP, height: area.height - planHeight - GAP };
  const choices = [below, rest].flatMap((place) => {
    const elevation = fitElevation(scene, units, place);
    return elevation === null ? [] : [{ elevation, place }];
  });
  const best = choices.toSorted((a, b) => a.elevation.scaleDenominator - b.elevation.scaleDenominator)[0];
  if (best === undefined) return { plan, planArea: area, elevation: null, elevationArea: rest };
  const { elevation, place } = best;
  const height = (elevation.bounds.maxY - elevation.bounds.minY) / elevation.scaleDenominator + HEADING_HEIGHT;
  if (place === rest) return { plan, planArea: area, elevation, elevationArea: { ...rest, height } };
  return {
    plan,
    planArea: { ...area, height: area.height - height - GAP },
    elevation,
    elevationArea: { ...area, y: area.y + area.height - height, height },
  };
}

function fitElevation(scene: Scene, units: Units, area: Area): FittedDrawing | null {
  const line = scene.lines[0];
  if (line === undefined) return null;
  const scales = usualScales(units).filter((n) => n >= 20 && n <= SMALLEST_ELEVATION);
  const draw = (scaleDenominator: number) => drawElevation(scene, line.machine.machine.id, { units, scaleDenominator, hasCaption: false });
  return fitDrawing(draw, scales, area.width, area.height - HEADING_HEIGHT);
}
