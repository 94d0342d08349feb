import { along, directionOf, lerp, type Point, scale } from '../../geometry';
import type { Finding, Verdict } from '../../rules';
import type { Scene } from '../../scene';
import { drawDimensions } from '../dimensions/drawDimensions';
import type { Drawing, Ink, Prim, SymbolPrim } from '../drawing';
import { layLabels } from '../labels/layLabels';
import { scaleBox } from '../layout/box';
import { type IsWorth, type Label, type LabelChoice, placeLabels } from '../layout/placeLabels';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { middleOf } from '../support/vec';
import { textBox } from '../typeset/textBox';
import { measureTextWidth } from '../typeset/textWidth';
import { isMarked, numberFindings } from './numberFindings';
import type { PlanOptions } from './planOptions';

/** The mark of each verdict: a shape of its own, so that nothing depends on hue. */
export const VERDICT_SHAPES: Record<Verdict, SymbolPrim['shape']> = {
  stop: 'square',
  watch: 'triangle',
  ask: 'ring-question',
  clear: 'check',
};

/** Of a mark, and from it to its number; paper mm. */
const SIZE = 4;
const GAP = 0.8;

/**
 * Findings on the plan: the chosen one's place lit up, and a numbered mark at the place of each that is marked; the numbers are
 * those of the list. Marks keep clear of each other, of item marks, notes and figures, with a leader where they stand aside.
 */
export function drawFindings(scene: Scene, findings: readonly Finding[], options: PlanOptions, chosen: string | null = null): Drawing {
  const unit = options.scaleDenominator;
  const texts = drawDimensions(scene, options).flatMap((prim) => (prim.kind === 'text' ? [scaleBox(textBox(prim, unit), 1 / unit)] : []));
  const labels = numbered(findings, numberFindings(findings), chosen).map((marked) => createLabel(marked, unit));
  return [...drawLight(findings, chosen), ...placeLabels(labels, [...layLabels(scene, options).taken, ...texts], []).prims];
}

/**
 * The same while something is dragged: each mark on its place, and where that is taken by another finding's, on it all the same.
 * The numbers are given, since not every finding is worked out at each move.
 */
export function drawFindingsInMotion(
  findings: readonly Finding[],
  numbers: ReadonlyMap<string, number>,
  options: PlanOptions,
  chosen: string | null,
): Drawing {
  const labels = numbered(findings, numbers, chosen).map((marked) => createLabelOnPlace(marked, options.scaleDenominator));
  return [...drawLight(findings, chosen), ...placeLabels(labels, [], []).prims];
}

/** The marked ones and the chosen one, whatever it says; one that is not numbered in the list has no number here. */
const numbered = (findings: readonly Finding[], numbers: ReadonlyMap<string, number>, chosen: string | null): Marked[] =>
  findings
    .filter((finding) => isMarked(finding) || finding.id === chosen)
    .map((finding) => ({ finding, number: String(numbers.get(finding.id) ?? ''), isChosen: finding.id === chosen }));

const drawLight = (findings: readonly Finding[], chosen: string | null) => findings.filter(({ id }) => id === chosen).flatMap(drawPlace);

/** The place of a finding, lit up. */
function drawPlace({ place, verdict, subjects }: Finding): Prim[] {
  const pen = createPen('findings', subjects[0]);
  switch (place.kind) {
    case 'point':
      return [pen.symbol(place.point, 'ring', 9, { stroke: verdict, width: WIDTH.bold })];
    case 'segment':
      return [pen.line([place.segment.a, place.segment.b], { stroke: verdict, width: WIDTH.bold * 2 })];
    case 'area':
      return place.polygons.map((polygon) => pen.area(polygon, { stroke: verdict, width: WIDTH.bold, fill: verdict, fillOpacity: 0.14 }));
  }
}

const REACHES = [5.5, 8.5, 12, 16, 21];
const WAYS = [45, -45, 135, -135, 0, 180, 90, -90];

/** A finding with its number in the list. */
interface Marked {
  finding: Finding;
  number: string;
  isChosen: boolean;
}

const LEVEL: Point = { x: 1, y: 0 };

function createLabelOnPlace(marked: Marked, unit: number): Label {
  return { isRequired: true, choices: spotsOf(marked.finding).map((spot, k) => createChoice(marked, spot, null, k * 0.3, unit)) };
}

/** On a spot of its place; or beside one, with a leader, whose end keeps off what is there as long as that can be. */
function createLabel(marked: Marked, unit: number): Label {
  const spots = [...spotsOf(marked.finding), ...cornersOf(marked.finding)];
  function* asides(isWorth: IsWorth) {
    for (const base of [ASIDE, CROWDED]) {
      if (!isWorth(base)) return;
      for (const { spot, deg, reach, cost } of waysAside(spots)) {
        if (!isWorth(base + cost)) continue;
        const choice = createChoice(marked, along(spot, directionOf(deg), reach * unit), spot, base + cost, unit);
        yield base === ASIDE ? choice : { ...choice, boxes: choice.boxes.slice(0, 1) };
      }
    }
  }
  return { ...createLabelOnPlace(marked, unit), spare: { cost: ASIDE, choices: asides } };
}

/** What it costs to stand beside a spot, and to have the leader's end on something else. */
const ASIDE = 2;
const CROWDED = 40;

/** The nearest ring about all spots first. */
function* waysAside(spots: readonly Point[]) {
  for (const [ring, reach] of REACHES.entries()) {
    for (const [k, spot] of spots.entries()) {
      for (const [i, deg] of WAYS.entries()) yield { spot, deg, reach, cost: ring * 2 + k * 0.5 + i * 0.05 };
    }
  }
}

/** Points of a finding's place, the middle first. */
function spotsOf({ place }: Finding): Point[] {
  if (place.kind === 'point') return [place.point];
  if (place.kind === 'segment') return [0.5, 0.2, 0.8].map((t) => lerp(place.segment.a, place.segment.b, t));
  return place.polygons.slice(0, 4).flatMap((polygon) => {
    const centre = middleOf(polygon);
    return [centre, ...polygon.slice(0, 4).map((corner) => lerp(centre, corner, 0.62))];
  });
}

/** Where a leader may end when the inside of a place is taken. */
const cornersOf = ({ place }: Finding): Point[] =>
  place.kind === 'area' ? place.polygons.slice(0, 4).flatMap((polygon) => polygon.slice(0, 4)) : [];

function createChoice(marked: Marked, at: Point, spot: Point | null, cost: number, unit: number): LabelChoice {
  const width = measureTextWidth(marked.number, LETTER.text, 'semibold');
  const centre = scale(at, 1 / unit);
  const box = {
    centre: { x: centre.x + (width + GAP) / 2, y: centre.y },
    d: LEVEL,
    halfLength: (SIZE + GAP + width) / 2,
    halfHeight: SIZE / 2,
  };
  const dots = spot === null ? [] : [{ centre: scale(spot, 1 / unit), d: LEVEL, halfLength: 0.7, halfHeight: 0.7 }];
  return { cost, boxes: [box, ...dots], draw: () => drawMark(marked, at, spot) };
}

function drawMark({ finding, number, isChosen }: Marked, at: Point, spot: Point | null): Prim[] {
  const pen = createPen('findings', finding.subjects[0]);
  const { verdict } = finding;
  const leader = (to: Point) => [
    pen.line([to, at], { stroke: verdict, width: WIDTH.medium }),
    pen.symbol(to, 'dot', 1.2, { fill: verdict }),
  ];
  const shift = { x: SIZE / 2 + (isChosen ? 1.6 : 0) + GAP, y: 0 };
  return [
    ...(spot === null ? [] : leader(spot)),
    ...(isChosen ? [pen.symbol(at, 'ring', SIZE + 2.6, { stroke: 'chosen', width: WIDTH.bold, fill: 'paper' })] : []),
    pen.symbol(at, VERDICT_SHAPES[verdict], SIZE, verdictInk(verdict)),
    ...(number === ''
      ? []
      : [pen.text(at, number, LETTER.text, { baseline: 'middle', shift, hue: verdict, weight: 'semibold', halo: true })]),
  ];
}

/** Ink of a verdict's mark. */
export const verdictInk = (verdict: Verdict): Ink =>
  verdict === 'stop' || verdict === 'watch'
    ? { fill: verdict }
    : { stroke: verdict, width: WIDTH.heavy, ...(verdict === 'ask' ? { fill: 'paper' } : {}) };
