import { describe, expect, it } from 'vitest';
import { OWN_CHECKS } from '../../src/app/store/ownChecks';
import { type ArcPrim, drawDimensions, drawFindings, drawPlan, type PlanOptions, type Prim, type SymbolPrim } from '../../src/drawing';
import { distance, type Point } from '../../src/geometry';
import { edit, type Opening, type Plan } from '../../src/plan';
import { runChecks } from '../../src/rules';
import { deriveScene, type Scene } from '../../src/scene';
import { examplePlan, examplePlans } from '../support/examplePlans';

const OPTIONS: PlanOptions = { units: 'us', scaleDenominator: 48 };
const drawAll = (plan: Plan): Prim[] => {
  const scene = deriveScene(plan);
  return [...drawPlan(scene, OPTIONS), ...drawDimensions(scene, OPTIONS), ...drawFindings(scene, runChecks(scene, OWN_CHECKS), OPTIONS)];
};
/** The item marks of a plan as keys. */
const marksOf = ({ marks }: Scene) => Object.fromEntries(Object.values(marks).map((mark) => [mark, true]));

const bySubject = (prims: readonly Prim[], subject: string) => prims.filter((prim) => prim.subject === subject);

describe('drawPlan', () => {
  it.each(examplePlans())('$name: everything that was said is drawn, and can be pressed', ({ plan }) => {
    const subjects = new Set(drawPlan(deriveScene(plan), OPTIONS).map(({ subject }) => subject));
    const { room } = plan;
    const said = [
      ...[...room.outline, ...room.openings, ...room.columns, ...room.floorDrains, ...room.stubs].map(({ id }) => id),
      ...[...plan.machines, ...plan.tables, ...plan.things, ...plan.hoods, ...plan.runs].map(({ id }) => id),
      ...plan.tables.flatMap(({ fittings }) => fittings.map(({ id }) => id)),
    ];
    expect(said.filter((id) => !subjects.has(id))).toEqual([]);
  });

  it('soiled and clean differ by pattern, what hangs overhead is dashed', () => {
    const drawing = drawPlan(deriveScene(examplePlan('school-corner')), OPTIONS);
    const patterns = (role: 'soiled' | 'clean') =>
      new Set(drawing.flatMap((prim) => ('pattern' in prim && prim.fill === role ? [prim.pattern] : [])));
    expect(patterns('soiled')).toContain('hatch-45');
    expect(patterns('clean')).toContain('dots');
    const above = drawing.filter((prim) => prim.layer === 'above' && prim.kind !== 'text');
    expect(above.length).toBeGreaterThan(0);
    for (const prim of above) expect('dash' in prim ? prim.dash : 'short').not.toBe('solid');
  });

  it('keeps the parts of what did not change', () => {
    const plan = examplePlan('school-corner');
    const before = drawPlan(deriveScene(plan), OPTIONS);
    const { plan: moved } = edit(plan, 'move the cart', (draft) => {
      const [, cart] = draft.things;
      if (cart !== undefined) cart.x += 100;
    });
    const after = new Set(drawPlan(deriveScene(moved), OPTIONS));
    const kept = before.filter((prim) => after.has(prim)).length;
    expect(kept / before.length).toBeGreaterThan(0.6);
  });

  it('remembered and fresh drawings are equal', () => {
    const plan = examplePlan('cafe-straight');
    expect(drawAll(plan)).toEqual(drawAll(structuredClone(plan)));
    expect(drawAll(plan)).toEqual(drawAll(plan));
  });
});

describe('a door', () => {
  const swings: { swing: Opening['swing']; hinge: Opening['hinge'] }[] = [
    { swing: 'in', hinge: 'start' },
    { swing: 'in', hinge: 'end' },
    { swing: 'out', hinge: 'start' },
    { swing: 'out', hinge: 'end' },
  ];

  it.each(swings)('swinging $swing, hinged at the $hinge: the arc runs from shut to open', ({ swing, hinge }) => {
    const plan = structuredClone(examplePlan('school-corner'));
    const opening = plan.room.openings.find(({ kind }) => kind === 'door');
    if (opening === undefined) throw new Error('no door');
    Object.assign(opening, { swing, hinge });
    const scene = deriveScene(plan);
    const placed = scene.room.openings.find((item) => item.opening.id === opening.id);
    const arc = bySubject(drawPlan(scene, OPTIONS), opening.id).find((prim): prim is ArcPrim => prim.kind === 'arc');
    if (placed === undefined || arc === undefined) throw new Error('no arc');
    const face = swing === 'in' ? 0 : -120;
    const on = (p: { x: number; y: number }) => ({ x: p.x + placed.wall.inward.x * face, y: p.y + placed.wall.inward.y * face });
    const [pivot, latch] = hinge === 'start' ? [placed.segment.a, placed.segment.b] : [placed.segment.b, placed.segment.a];
    const way = swing === 'in' ? 1 : -1;
    const tip = {
      x: on(pivot).x + placed.wall.inward.x * way * opening.width,
      y: on(pivot).y + placed.wall.inward.y * way * opening.width,
    };
    const ends = [arc.fromDeg, arc.toDeg].map((deg) => ({
      x: arc.centre.x + arc.radius * Math.cos((deg * Math.PI) / 180),
      y: arc.centre.y + arc.radius * Math.sin((deg * Math.PI) / 180),
    }));
    expect(distance(arc.centre, on(pivot))).toBeLessThan(1e-6);
    expect(Math.min(...ends.map((end) => distance(end, on(latch))))).toBeLessThan(1e-6);
    expect(Math.min(...ends.map((end) => distance(end, tip)))).toBeLessThan(1e-6);
  });
});

describe('findings', () => {
  const scene = deriveScene(examplePlan('cafe-straight'));
  const open = runChecks(scene, OWN_CHECKS).filter(({ verdict }) => verdict !== 'clear');
  const symbols = (prims: readonly Prim[]) => prims.filter((prim): prim is SymbolPrim => prim.kind === 'symbol');

  it('each bears its number and the shape of its verdict', () => {
    const drawing = drawFindings(scene, open, OPTIONS);
    const numbers = drawing.flatMap((prim) => (prim.kind === 'text' ? [prim.text] : []));
    expect(numbers).toEqual(open.map((_, i) => String(i + 1)));
    expect(symbols(drawing).filter(({ shape, fill }) => shape === 'square' && fill === 'stop')).toHaveLength(5);
  });

  it('questions bear no mark, but for the chosen one, and no number', () => {
    const hotel = deriveScene(examplePlan('hotel-heat-recovery'));
    const asked = runChecks(hotel, OWN_CHECKS).filter(({ verdict }) => verdict === 'ask');
    expect(asked.length).toBeGreaterThan(0);
    expect(drawFindings(hotel, asked, OPTIONS)).toEqual([]);
    const chosen = drawFindings(hotel, asked, OPTIONS, asked[0]?.id ?? '');
    expect(symbols(chosen).filter(({ shape }) => shape === 'ring-question')).toHaveLength(1);
    expect(chosen.filter((prim) => prim.kind === 'text')).toEqual([]);
  });

  it('the chosen one lights its place', () => {
    const chosen = open.find(({ place }) => place.kind === 'area');
    const lit = (id: string | null) =>
      drawFindings(scene, open, OPTIONS, id).filter((prim) => prim.kind === 'area' && (prim.fillOpacity ?? 1) < 0.5);
    expect(chosen).toBeDefined();
    expect(lit(null)).toEqual([]);
    expect(lit(chosen?.id ?? '').length).toBeGreaterThan(0);
  });

  it.each(examplePlans().flatMap(({ name, plan }) => [48, 68, 92, 110, 140].map((scaleDenominator) => ({ name, plan, scaleDenominator }))))(
    '$name at 1:$scaleDenominator: none covers an item mark',
    ({ plan, scaleDenominator }) => {
      const drawn = deriveScene(plan);
      const options = { ...OPTIONS, scaleDenominator };
      const found = runChecks(drawn, OWN_CHECKS).filter(({ verdict }) => verdict !== 'clear');
      const marks = symbols(drawFindings(drawn, found, options)).filter(({ shape }) => shape !== 'dot' && shape !== 'ring');
      // Questions stand in the list.
      expect(marks).toHaveLength(found.filter(({ verdict }) => verdict !== 'ask').length);
      const items = drawPlan(drawn, options).flatMap((prim) => (prim.kind === 'text' && prim.text in marksOf(drawn) ? [prim.at] : []));
      // A lozenge reaches 3.3 mm to either side and 2 up and down, the mark of a finding 2 all around.
      const isCovered = (at: Point) =>
        marks.some((mark) => Math.abs(mark.at.x - at.x) < 5 * scaleDenominator && Math.abs(mark.at.y - at.y) < 4 * scaleDenominator);
      expect(items.length).toBeGreaterThan(3);
      expect(items.filter(isCovered)).toEqual([]);
    },
  );

  it('none covers another or a figure', () => {
    const marks = symbols(drawFindings(scene, open, OPTIONS)).filter(({ shape }) => shape === 'square');
    for (const [i, a] of marks.entries()) for (const b of marks.slice(i + 1)) expect(distance(a.at, b.at) / 48).toBeGreaterThan(3.5);
  });
});
