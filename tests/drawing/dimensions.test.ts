import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/catalog';
import { drawDimensions, drawPlan, type Prim, type TextPrim, textBox } from '../../src/drawing';
import { overlaps } from '../../src/drawing/layout/box';
import { dot, type Point, sub } from '../../src/geometry';
import { createLinePlan, type Plan, transformPlan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { formatterFor, parseLength } from '../../src/units';
import { examplePlan, examplePlans } from '../support/examplePlans';
import { createRandom } from '../support/seeded';

interface Case {
  name: string;
  plan: Plan;
  /** The n of 1 : n that it is drawn for. */
  scales: number[];
}

const turned = (plan: Plan, rotateDeg: number, mirror = false): Plan =>
  transformPlan(plan, { rotateDeg, mirror, move: { x: 1234, y: -567 } });

/** Every family in every configuration and hand, and the examples, turned by angles that a seed chooses. */
function listCases(): Case[] {
  const random = createRandom(20_261_125);
  const lines = FAMILIES.flatMap(({ id }) =>
    (['straight', 'left-front', 'right-front'] as const).flatMap((configuration) =>
      (['left-to-right', 'right-to-left'] as const).map((hand) => ({
        name: `${id}, ${configuration}, ${hand}`,
        scales: [[32, 50, 100][Math.floor(random() * 3)] ?? 50],
        plan: createLinePlan({ family: id, configuration, hand, rotationDeg: Math.round(random() * 3600) / 10 }),
      })),
    ),
  );
  const examples = examplePlans().flatMap(({ name, plan }) => [
    { name, plan, scales: [20, 24, 48, 50, 96, 200] },
    ...[90, 180, 270, Math.round(random() * 3600) / 10].map((deg) => ({
      name: `${name}, turned ${deg}°`,
      plan: turned(plan, deg),
      scales: [48],
    })),
    { name: `${name}, in a mirror`, plan: turned(plan, 0, true), scales: [48] },
  ]);
  return [...examples, ...lines];
}

const textsOf = (prims: readonly Prim[]) => prims.filter((prim): prim is TextPrim => prim.kind === 'text');

describe('no text of a plan covers another text', () => {
  it.each(listCases())('$name', ({ plan, scales }) => {
    const scene = deriveScene(plan);
    for (const scaleDenominator of scales) {
      for (const units of ['us', 'metric'] as const) {
        const options = { units, scaleDenominator };
        const texts = [...textsOf(drawPlan(scene, options)), ...textsOf(drawDimensions(scene, options))];
        expect(texts.length).toBeGreaterThan(12);
        expect(findOverlaps(texts, scaleDenominator)).toEqual([]);
      }
    }
  });
});

function findOverlaps(texts: readonly TextPrim[], unit: number): string[] {
  const boxes = texts.map((text) => textBox(text, unit));
  return boxes.flatMap((a, i) =>
    boxes.flatMap((b, j) => (j > i && overlaps(a, b) ? [`1:${unit} “${texts[i]?.text}” over “${texts[j]?.text}”`] : [])),
  );
}

/** A figure lies above the middle of its line, so the two ticks nearest to it on either side, along the text, are its ends. */
describe('figures say what is measured', () => {
  it.each(examplePlans())('$name', ({ plan }) => {
    const drawing = drawDimensions(deriveScene(plan), { units: plan.settings.units, scaleDenominator: 24 });
    const spans = readSpans(drawing);
    expect(spans.length).toBeGreaterThan(15);
    const wrong = spans.filter(({ text, length }) => Math.abs(read(text, plan.settings.units) - length) > 1);
    expect(wrong).toEqual([]);
  });
});

const read = (text: string, units: 'us' | 'metric'): number => {
  const result = parseLength(text, units === 'us' ? 'in' : 'mm');
  return result.ok ? result.mm : Number.NaN;
};

/** Each figure is drawn right after the two ticks of its span. */
function readSpans(drawing: readonly Prim[]): { text: string; length: number }[] {
  return drawing.flatMap((prim, i) => {
    if (prim.kind !== 'text') return [];
    const ticks = drawing
      .slice(Math.max(0, i - 3), i)
      .flatMap((other) => (other.kind === 'symbol' && other.shape === 'tick' ? [other.at] : []));
    const [a, b] = ticks;
    return a === undefined || b === undefined ? [] : [{ text: prim.text, length: distanceBetween(a, b) }];
  });
}

const distanceBetween = (a: Point, b: Point) => Math.sqrt(dot(sub(a, b), sub(a, b)));

describe('what can be typed into', () => {
  const plan = examplePlan('school-corner');
  const drawing = drawDimensions(deriveScene(plan), { units: 'us', scaleDenominator: 48 });
  const edits = textsOf(drawing).flatMap(({ edit, text }) => (edit === undefined ? [] : [{ path: edit.join('.'), text }]));

  it.each([
    ['tables.0.legs.0.length', plan.tables[0]?.legs[0]?.length],
    ['tables.1.legs.0.length', plan.tables[1]?.legs[0]?.length],
    ['tables.0.depth', plan.tables[0]?.depth],
    ['room.openings.0.width', plan.room.openings[0]?.width],
    ['room.openings.0.from', plan.room.openings[0]?.from],
  ])('%s', (path, value) => {
    expect(edits).toContainEqual({ path, text: formatterFor('us').length(value ?? Number.NaN) });
  });

  it('every wall or the whole room has its length', () => {
    expect(edits.filter(({ path }) => /^room\.outline\.\d\.length$/.test(path)).length).toBeGreaterThanOrEqual(4);
  });

  it('every path that is no wall leads to a number of the plan', () => {
    const read = (path: string) => path.split('.').reduce<unknown>((at, key) => (at as Record<string, unknown>)[key], plan);
    const others = edits.filter(({ path }) => !path.startsWith('room.outline'));
    expect(others.length).toBeGreaterThan(8);
    expect(others.filter(({ path }) => typeof read(path) !== 'number')).toEqual([]);
  });
});

describe('the drawing turns with the room', () => {
  const plan = examplePlan('care-home-direct-vent');
  const figures = (turn: number) =>
    textsOf(drawDimensions(deriveScene(turned(plan, turn)), { units: 'us', scaleDenominator: 24 })).map(({ text }) => text);

  it.each([90, 180, 270, 33])('by %i°: the walls, the line and the openings are dimensioned as before', (turn) => {
    const before = new Set(figures(0));
    const shared = new Set(figures(turn).filter((text) => before.has(text)));
    expect(shared.size).toBeGreaterThanOrEqual(before.size - 4);
  });

  it('every text reads from the bottom or the right of the paper', () => {
    for (const turn of [0, 45, 90, 135, 180, 225, 270, 315]) {
      const texts = textsOf(drawDimensions(deriveScene(turned(plan, turn)), { units: 'us', scaleDenominator: 48 }));
      for (const { angleDeg = 0 } of texts) expect(angleDeg >= -90 - 1e-6 && angleDeg < 90 - 1e-7).toBe(true);
    }
  });
});
