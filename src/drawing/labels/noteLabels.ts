import { along, angleOf, directionOf, distance, dot, type Point, rightOf, scale } from '../../geometry';
import type { DeckStretch, PlacedHood, PlacedRun, PlacedTable, PlacedThing, Scene } from '../../scene';
import type { Formatter } from '../../units';
import type { Hue, Prim, TextPrim } from '../drawing';
import { placeOnPath } from '../floorPlan/alongPath';
import { flattenPath } from '../floorPlan/drawRun';
import { placeAcross } from '../floorPlan/drawTable';
import { scaleBox } from '../layout/box';
import type { IsWorth, Label, LabelChoice } from '../layout/placeLabels';
import { LETTER, WIDTH } from '../support/ink';
import { createPen } from '../support/pen';
import { direction, readingAngle } from '../support/vec';
import { textBox } from '../typeset/textBox';
import { measureTextWidth } from '../typeset/textWidth';
import { describeRun } from './describeRun';

/** Short notes on the plan: falls with their arrows, hoods, runs, names of things. Each is left out where it finds no room. */
export function createNoteLabels(scene: Scene, f: Formatter, unit: number): Label[] {
  return [
    ...scene.runs.map((run) => createRunLabel(scene, run, f, unit)),
    ...scene.hoods.map((hood) => createHoodLabel(hood, f, unit)),
    ...scene.tables.flatMap((table) => createFallLabels(scene, table, f, unit)),
    ...scene.things.map((thing) => createNameLabel(thing, unit)),
  ];
}

/** Beside the run's longest level stretch, along it, on either side. */
function createRunLabel(scene: Scene, placed: PlacedRun, f: Formatter, unit: number): Label {
  const path = flattenPath(placed.points);
  const legs = path.slice(1).map((b, i): [Point, Point] => [path[i] ?? b, b]);
  const longest = legs.toSorted((p, q) => distance(...q) - distance(...p));
  const text = describeRun(scene, placed, f);
  const offset = placed.run.diameter / 2 / unit + 1.2;
  const choices = longest.flatMap(([a, b], leg) =>
    [0.5, 0.35, 0.65].flatMap((share, i) =>
      [-1, 1].map((side, j) => createAlong('run', placed.run.id, a, b, share, side * offset, text, 'air', leg * 3 + i + j * 0.3, unit)),
    ),
  );
  const asides = (isWorth: IsWorth) => createAsides('run', placed.run.id, path, text, ASIDE_OF_RUN, unit, isWorth);
  return { choices, spare: { cost: ASIDE_OF_RUN, choices: asides }, isRequired: false };
}

/** What it costs to stand off the edge of a hood, and off a run. */
const ASIDE_OF_HOOD = 3;
const ASIDE_OF_RUN = 9;

/** Directions from a point in which a note may stand to its side. */
const SIDEWAYS = [-30, -150, 30, 150, -60, -120, 60, 120];

/** Shares of its own width by which a note over or under a point may stand aside of it. */
const SHIFTS = [0, 0.1, -0.1, 0.2, -0.2, 0.3, -0.3, 0.45, -0.45];

/** Level, away from points, with a leader: to their sides, or else over or under them; of these what is still worth it. */
function* createAsides(
  layer: 'run' | 'above',
  subject: string,
  points: readonly Point[],
  text: string,
  cost: number,
  unit: number,
  isWorth: IsWorth,
): Generator<LabelChoice> {
  const pen = createPen(layer, subject);
  const width = measureTextWidth(text, LETTER.text);
  for (const point of points) {
    for (const { reach, deg, share, extra } of ASIDES) {
      if (!isWorth(cost + extra)) continue;
      const at = along(point, directionOf(deg), reach * unit);
      const label = pen.text(at, text, LETTER.text, { hue: 'air', halo: true, ...setAside(deg, share * width) });
      const draw = () => [pen.line([point, at], { stroke: 'air', width: WIDTH.narrow }), label];
      yield { draw, boxes: [scaleBox(textBox(label, unit), 1 / unit)], cost: cost + extra };
    }
  }
}

/** How far off and in which direction a note may stand, its shift as a share of its width, and how much worse that is than the best. */
const ASIDES = [7, 11, 16, 22].flatMap((reach, i) => [
  ...SIDEWAYS.map((deg, j) => ({ reach, deg, share: 0, extra: i + j * 0.2 })),
  ...[-90, 90].flatMap((deg) => SHIFTS.map((share, j) => ({ reach, deg, share, extra: i + 1.8 + j * 0.1 }))),
]);

/** How letters are set beside, over or under the end of a leader that runs in a direction. */
function setAside(deg: number, shift: number): Pick<TextPrim, 'anchor' | 'baseline' | 'shift'> {
  if (Math.abs(deg) === 90) return { anchor: 'middle', baseline: deg < 0 ? 'bottom' : 'top', shift: { x: shift, y: deg < 0 ? -0.6 : 0.6 } };
  const side = Math.abs(deg) < 90 ? 1 : -1;
  return { anchor: side > 0 ? 'start' : 'end', baseline: 'middle', shift: { x: side * 0.8, y: 0 } };
}

function createHoodLabel({ hood, polygon }: PlacedHood, f: Formatter, unit: number): Label {
  const lip = hood.lipHeight === null ? 'height not known' : `lip ${f.length(hood.lipHeight)}`;
  const text = `Hood, ${lip}`;
  const edges = polygon.map((a, i): [Point, Point] => [a, polygon[(i + 1) % polygon.length] ?? a]);
  const upright = (p: Point, q: Point) => (Math.abs(q.y - p.y) > Math.abs(q.x - p.x) ? 1 : 0);
  const choices = edges.flatMap(([a, b]) =>
    [0.5, 0.3, 0.7].flatMap((share, i) =>
      [-1.4, 1.4].map((offset, j) => createAlong('above', hood.id, a, b, share, offset, text, 'air', i + j * 0.4 + upright(a, b), unit)),
    ),
  );
  const asides = (isWorth: IsWorth) => createAsides('above', hood.id, polygon, text, ASIDE_OF_HOOD, unit, isWorth);
  return { choices, spare: { cost: ASIDE_OF_HOOD, choices: asides }, isRequired: false };
}

/** On the strip behind the racks: an arrow down the slope and the slope, or that the stretch is level. */
function createFallLabels(scene: Scene, table: PlacedTable, f: Formatter, unit: number): Label[] {
  const stretches = table.water?.stretches ?? [];
  return stretches
    .filter((stretch) => (stretch.to - stretch.from) / unit > 12)
    .map((stretch) => ({ choices: createFallChoices(scene, table, stretch, f, unit), isRequired: false }));
}

function createFallChoices(scene: Scene, table: PlacedTable, stretch: DeckStretch, f: Formatter, unit: number): LabelChoice[] {
  const { depth, rackLineFromEdge, id, role } = table.table;
  const isLevel = Math.abs(stretch.slope) < 1e-5;
  const text = isLevel ? 'level' : f.slope(Math.abs(stretch.slope));
  const hue: Hue = stretch.runsTo === 'stands' ? 'stop' : role;
  const strip = (scene.plan.settings.rackSize / 2 + depth - rackLineFromEdge) / 2;
  const width = measureTextWidth(text, LETTER.text) * unit;
  const arrow = isLevel ? 0 : 5.5 * unit;
  return [0.3, 0.75, 0.5, 0.4, 0.6, 0.2].flatMap((share, i) => {
    const s = stretch.from + share * (stretch.to - stretch.from);
    const { heading } = placeOnPath(table.path, s);
    return [-strip, 0].map((offset, j) => {
      const centre = placeAcross(table, s, offset);
      const d = stretch.slope > 0 ? scale(heading, -1) : heading;
      return createFallChoice(id, centre, d, { text, width, arrow, hue, cost: i + j * 3, unit });
    });
  });
}

interface FallStyle {
  text: string;
  /** Of the text and of the arrow after it, plan mm. */
  width: number;
  arrow: number;
  hue: Hue;
  cost: number;
  unit: number;
}

/** Text, then the arrow that points down the slope `d`. */
function createFallChoice(subject: string, centre: Point, d: Point, style: FallStyle): LabelChoice {
  const { text, width, arrow, hue, cost, unit } = style;
  const pen = createPen('notes', subject);
  const gap = arrow === 0 ? 0 : 1.2 * unit;
  const middle = along(centre, d, -(arrow + gap) / 2);
  const label = pen.text(middle, text, LETTER.text, { anchor: 'middle', baseline: 'middle', angleDeg: readingAngle(d), hue, halo: true });
  const from = along(middle, d, width / 2 + gap);
  const to = along(from, d, arrow);
  const line: Prim[] =
    arrow === 0
      ? []
      : [pen.line([from, to], { stroke: hue, width: WIDTH.wide }), pen.symbol(to, 'arrow', 2.4, { fill: hue, angleDeg: angleOf(d) })];
  const { d: way, halfHeight } = textBox(label, unit);
  const whole = { centre: along(centre, d, 0), d: way, halfLength: (width + gap + arrow) / 2, halfHeight };
  return { draw: () => [label, ...line], boxes: [scaleBox(whole, 1 / unit)], cost };
}

/** Under the mark, along the longer side of the thing, when the name fits in it. */
function createNameLabel({ thing, polygon, name }: PlacedThing, unit: number): Label {
  const long = thing.width >= thing.depth;
  const [a, b] = long ? [polygon[0], polygon[1]] : [polygon[1], polygon[2]];
  const room = Math.max(thing.width, thing.depth) / unit - 2;
  const width = measureTextWidth(name, LETTER.text);
  if (a === undefined || b === undefined || width > room || Math.min(thing.width, thing.depth) / unit < 4)
    return { choices: [], isRequired: false };
  const centre = { x: thing.x, y: thing.y };
  const d = direction(a, b);
  const choices = [0, 5, -5, (room - width) / 2, (width - room) / 2].flatMap((shift, i) =>
    [0, 3.9, -3.9].map((across, j) => {
      const at = along(along(centre, d, shift * unit), rightOf(d), across * unit);
      const label = createPen('notes', thing.id).text(at, name, LETTER.text, {
        anchor: 'middle',
        baseline: 'middle',
        angleDeg: readingAngle(d),
        hue: 'ink',
        halo: true,
      });
      return { draw: () => [label], boxes: [scaleBox(textBox(label, unit), 1 / unit)], cost: i + j * 0.5 };
    }),
  );
  return { choices, isRequired: false };
}

/** A text along an edge from `a` to `b`, `offset` paper mm to its right. */
function createAlong(
  layer: 'run' | 'above',
  subject: string,
  a: Point,
  b: Point,
  share: number,
  offset: number,
  text: string,
  hue: Hue,
  cost: number,
  unit: number,
): LabelChoice {
  const d = direction(a, b);
  const angleDeg = readingAngle(d);
  const at = along(along(a, d, share * distance(a, b)), rightOf(d), offset * unit);
  const isReversed = dot(directionOf(angleDeg), d) < 0;
  const isBelow = offset > 0 !== isReversed;
  const label = createPen(layer, subject).text(at, text, LETTER.text, {
    anchor: 'middle',
    baseline: isBelow ? 'top' : 'bottom',
    angleDeg,
    hue,
    halo: true,
  });
  const long = measureTextWidth(text, LETTER.text) * unit > distance(a, b) ? 6 : 0;
  return { draw: () => [label], boxes: [scaleBox(textBox(label, unit), 1 / unit)], cost: cost + long };
}
