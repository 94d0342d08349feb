import { describe, expect, it } from 'vitest';
import { drawElevation, type ElevationOptions, type LinePrim, type Prim, type TextPrim, textBox } from '../../src/drawing';
import { overlaps } from '../../src/drawing/layout/box';
import { createLinePlan, createPlan, type Plan, transformPlan } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { formatterFor } from '../../src/units';
import { examplePlan, examplePlans } from '../support/examplePlans';

const draw = (plan: Plan, options: Partial<ElevationOptions> = {}) =>
  drawElevation(deriveScene(plan), plan.machines[0]?.id ?? null, { units: 'metric', scaleDenominator: 50, ...options });

const textsOf = (prims: readonly Prim[]) => prims.filter((prim): prim is TextPrim => prim.kind === 'text');
const wordsOf = (prims: readonly Prim[]) => textsOf(prims).map(({ text }) => text);

/** The deck of a table: its one bold open line. */
function deckOf(prims: readonly Prim[], role: 'soiled' | 'clean'): LinePrim {
  const found = prims.find((prim): prim is LinePrim => prim.kind === 'line' && prim.stroke === role && (prim.width ?? 0) >= 0.7);
  if (found === undefined) throw new Error(`no ${role} deck`);
  return found;
}

const line = (change: (plan: Plan) => void = () => {}, hand: 'left-to-right' | 'right-to-left' = 'left-to-right'): Plan => {
  const plan = structuredClone(createLinePlan({ family: 'recirculating-hot-water', configuration: 'left-front', hand }));
  change(plan);
  return plan;
};

describe('the unrolled line', () => {
  it.each([
    ['left-to-right', -1],
    ['right-to-left', 1],
  ] as const)('%s: the soiled table lies on the side that its racks come from', (hand, side) => {
    const soiled = deckOf(draw(line(undefined, hand)), 'soiled');
    expect(soiled.points.every(({ x }) => x * side > 0)).toBe(true);
  });

  it('is as long as its parts: tables, and the track from door to door around the corner', () => {
    const plan = line();
    const prims = draw(plan);
    const xs = [...deckOf(prims, 'soiled').points, ...deckOf(prims, 'clean').points].map(({ x }) => x);
    const legs = plan.tables.reduce((sum, table) => sum + table.legs.reduce((all, leg) => all + leg.length, 0), 0);
    // Door to door: 368.5 mm from the left side to the front's rack line, then 711 − 355.5 mm to the front.
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(legs + 368.5 + 355.5, 6);
  });

  it.each([1, 10])('a deck is drawn %i times as steep about the track, and the figures stay true', (exaggeration) => {
    const plan = line();
    const prims = draw(plan, { exaggeration });
    const [table] = plan.tables;
    const length = table?.legs[0]?.length ?? 0;
    const { deck } = table ?? {};
    const fall = deck?.kind === 'fall' ? (deck.fall ?? Number.NaN) : Number.NaN;
    const { points } = deckOf(prims, 'soiled');
    const heights = points.map(({ y }) => -y);
    expect(Math.max(...heights) - Math.min(...heights)).toBeCloseTo(length * fall * exaggeration, 6);
    expect(Math.min(...heights)).toBeCloseTo(863.6, 6);
    expect(wordsOf(prims)).toContain(formatterFor('metric').length(863.6 + length * fall));
  });

  it('says that the fall is exaggerated', () => {
    expect(wordsOf(draw(line())).join(' ')).toContain('Fall drawn × 10');
    expect(wordsOf(draw(line(), { exaggeration: 1 })).join(' ')).not.toContain('×');
    expect(wordsOf(draw(line(), { hasCaption: false })).join(' ')).not.toContain('×');
  });

  it('standing water is filled to a level surface', () => {
    const plan = line((draft) => {
      for (const table of draft.tables) if (table.role === 'clean') table.deck = { kind: 'heights', heights: [863.6, 850] };
    });
    const pool = draw(plan).find((prim) => prim.kind === 'area' && prim.fill === 'water' && (prim.fillOpacity ?? 0) > 0.3);
    const ring = pool?.kind === 'area' ? (pool.rings[0] ?? []) : [];
    expect(ring.length).toBeGreaterThanOrEqual(4);
    const [a, b] = ring.slice(-2);
    expect(a?.y).toBeCloseTo(b?.y ?? Number.NaN, 9);
    expect(Math.max(...ring.map(({ y }) => y))).toBeGreaterThan((a?.y ?? 0) + 1);
  });

  it('no water is drawn where none stands', () => {
    expect(draw(line()).some((prim) => prim.kind === 'area' && prim.fill === 'water' && (prim.fillOpacity ?? 0) > 0.3)).toBe(false);
  });

  it('a height that is not known is asked for, at its path', () => {
    const plan = line((draft) => {
      const [table] = draft.tables;
      if (table !== undefined) table.deck = { kind: 'fall', jointHeight: null, fall: 0.02 };
    });
    const asked = textsOf(draw(plan)).find(({ text }) => text === 'height?');
    expect(asked?.edit).toEqual(['tables', 0, 'deck', 'jointHeight']);
    expect(asked?.hue).toBe('ask');
  });

  it.each([
    ['hoods.0.lipHeight', 'hood lip'],
    ['room.ceilingHeight', 'ceiling'],
    ['tables.0.deck.jointHeight', '34″'],
    ['tables.0.deck.fall', '¼″ per ft'],
  ])('%s can be typed into', (path, name) => {
    const texts = textsOf(draw(line(), { units: 'us' }));
    expect(texts.map(({ edit }) => edit?.join('.'))).toContain(path);
    expect(texts.map(({ text }) => text)).toContain(name);
  });

  it('lights the stretch of a finding', () => {
    const [table] = line().tables;
    const lit = draw(line(), { lit: { table: table?.id ?? '', from: 100, to: 900 } }).find((prim) => prim.layer === 'findings');
    const xs = lit?.kind === 'line' ? lit.points.map(({ x }) => x) : [];
    expect(Math.max(...xs) - Math.min(...xs)).toBeCloseTo(800, 6);
  });

  // As small as in a window 1024 px wide; the drawer shows two rows below the floor.
  it.each(examplePlans().flatMap(({ name, plan }) => [50, 70, 86].map((scaleDenominator) => ({ name, plan, scaleDenominator }))))(
    '$name at 1:$scaleDenominator: each station is named, in two rows',
    ({ plan, scaleDenominator }) => {
      const notes = textsOf(draw(plan, { scaleDenominator, hasCaption: false })).filter(({ layer }) => layer === 'notes');
      const rows = new Map(notes.map(({ text, at }) => [text, (at.y / scaleDenominator - 5) / 3.6]));
      const names = ['drop-off', 'scrap', 'pre-rinse', 'soiled landing', 'machine', 'clean landing'];
      expect(names.filter((name) => !rows.has(name))).toEqual([]);
      expect(names.filter((name) => (rows.get(name) ?? 0) > 1 + 1e-9)).toEqual([]);
    },
  );

  const BROKEN = examplePlans().flatMap(({ name, plan }) => [40, 50, 58, 66, 74, 86, 100].map((scale) => ({ name, plan, scale })));

  it.each(BROKEN)('$name at 1:$scale with heights cut short: falls and heights stand off the floor line', ({ plan, scale }) => {
    const prims = draw(plan, { scaleDenominator: scale, units: plan.settings.units, isBroken: true, exaggeration: 10, hasCaption: false });
    const ofDecks = textsOf(prims).filter(({ subject }) => plan.tables.some(({ id }) => id === subject));
    expect(ofDecks.length).toBeGreaterThanOrEqual(5);
    const low = ofDecks.filter((text) => {
      const { centre, halfHeight } = textBox(text, scale);
      return centre.y + halfHeight > -0.5 * scale;
    });
    expect(low.map(({ text }) => text)).toEqual([]);
  });

  it.each(BROKEN)('$name at 1:$scale with heights cut short: each height is named', ({ plan, scale }) => {
    const words = wordsOf(draw(plan, { scaleDenominator: scale, isBroken: true, exaggeration: 10, hasCaption: false }));
    const names = ['track', 'doors open', ...plan.hoods.map(() => 'hood lip'), ...(plan.room.ceilingHeight === null ? [] : ['ceiling'])];
    expect(names.filter((name) => !words.includes(name))).toEqual([]);
  });

  it('does not change when the room is turned', () => {
    const plan = examplePlan('school-corner');
    const words = (turn: number) => wordsOf(draw(transformPlan(plan, { rotateDeg: turn, move: { x: 10, y: 20 } }))).toSorted();
    for (const turn of [90, 180, 33]) expect(words(turn)).toEqual(words(0));
  });

  it.each([null, 'no-such-machine'])('without a machine (%s) it says so', (id) => {
    const prims = drawElevation(deriveScene(createPlan()), id, { units: 'us', scaleDenominator: 50 });
    expect(wordsOf(prims)).toEqual(['No machine yet: with one on the plan, its line is drawn here.']);
  });
});

describe('no text covers another', () => {
  it.each(
    examplePlans().flatMap(({ name, plan }) =>
      [15, 30, 64].flatMap((scale) => [false, true].map((isBroken) => ({ name: `${name}, 1 : ${scale}`, plan, scale, isBroken }))),
    ),
  )('$name, cut short: $isBroken', ({ plan, scale, isBroken }) => {
    const texts = textsOf(draw(plan, { scaleDenominator: scale, units: plan.settings.units, isBroken }));
    const covered = texts.flatMap((a, i) =>
      texts.slice(i + 1).flatMap((b) => (overlaps(textBox(a, scale), textBox(b, scale)) ? [`“${a.text}” “${b.text}”`] : [])),
    );
    expect(covered).toEqual([]);
  });
});
