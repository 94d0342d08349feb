import { createPen, LETTER, type Prim, WIDTH } from '../../drawing';
import { along, directionOf } from '../../geometry';
import type { Formatter, Units } from '../../units';

/** Space that the north arrow takes, across and down, paper mm. */
export const NORTH_SIZE = 20;

/** North: an arrow in a ring about a point. 0° is up the paper. */
export function drawNorth(northDeg: number, x: number, y: number): Prim[] {
  const pen = createPen('notes');
  const centre = { x, y };
  const up = directionOf(northDeg - 90);
  const side = directionOf(northDeg);
  const radius = 6;
  const tip = along(centre, up, radius);
  const foot = along(centre, up, -radius);
  const half = (way: number) => [tip, along(foot, side, way * 2.6), along(foot, up, 2)];
  return [
    pen.circle(centre, radius, { stroke: 'ink', width: WIDTH.narrow }),
    pen.area(half(1), { fill: 'ink', stroke: 'ink', width: WIDTH.narrow }),
    pen.area(half(-1), { fill: 'paper', stroke: 'ink', width: WIDTH.narrow }),
    pen.text(along(centre, up, radius + 2.6), 'N', LETTER.text, { anchor: 'middle', baseline: 'middle', weight: 'semibold' }),
  ];
}

/** Width and height that a scale bar takes with its words, paper mm. */
export const SCALE_BAR = { width: 112, height: 13 };

/** The longest that the bar may be: 4 in, or 100 mm. */
const LONGEST: Record<Units, number> = { us: 101.6, metric: 100 };
/** Whole steps of a foot or a metre. */
const STEPS = [0.1, 0.2, 0.25, 0.5, 1, 2, 4, 5, 8, 10, 16, 20, 25, 50, 100];
const MM_OF: Record<Units, number> = { us: 304.8, metric: 1000 };

export interface ScaleBar {
  steps: number;
  /** Of the room, in feet or metres. */
  step: number;
  /** Of the whole bar on paper, mm. */
  lengthMm: number;
}

/** The longest bar of four or five equal, whole steps: 100 mm or 4 in of paper at the usual scales. */
export function measureScaleBar(scaleDenominator: number, units: Units): ScaleBar {
  const bars = STEPS.flatMap((step) =>
    [5, 4].map((steps): ScaleBar => ({ steps, step, lengthMm: (steps * step * MM_OF[units]) / scaleDenominator })),
  );
  const fitting = bars.filter(({ lengthMm }) => lengthMm <= LONGEST[units] + 1e-6);
  return fitting.reduce<ScaleBar>((best, bar) => (bar.lengthMm > best.lengthMm + 1e-6 ? bar : best), { steps: 4, step: 0, lengthMm: 0 });
}

/** A scale bar with its length on paper, so that whoever prints the sheet can hold a rule against it. */
export function drawScaleBar(scaleDenominator: number, f: Formatter, scaleText: string, x: number, y: number): Prim[] {
  const pen = createPen('notes');
  const { steps, step, lengthMm } = measureScaleBar(scaleDenominator, f.units);
  const at = (i: number) => x + (i * lengthMm) / steps;
  const bars = Array.from({ length: steps }, (_, i) => {
    const ring = [
      { x: at(i), y: y + 3.6 },
      { x: at(i + 1), y: y + 3.6 },
      { x: at(i + 1), y: y + 5.2 },
      { x: at(i), y: y + 5.2 },
    ];
    return pen.area(ring, { stroke: 'ink', width: WIDTH.narrow, fill: i % 2 === 0 ? 'ink' : 'paper' });
  });
  const labels = Array.from({ length: steps + 1 }, (_, i) =>
    pen.text({ x: at(i), y: y + 2.6 }, labelOf(i * step, f.units), LETTER.text, { anchor: i === 0 ? 'start' : 'middle' }),
  );
  const words = `Plan ${scaleText}. On paper the bar is ${f.length(lengthMm)} long; if it is not, measure nothing from this print.`;
  return [...bars, ...labels, pen.text({ x, y: y + 9.4 }, words, LETTER.text * 0.92, { hue: 'second' })];
}

/** `2.5 m`, `16′`; whole where it is whole. */
const labelOf = (value: number, units: Units) => (value === 0 ? '0' : `${Number(value.toFixed(2))}${units === 'metric' ? ' m' : '′'}`);
