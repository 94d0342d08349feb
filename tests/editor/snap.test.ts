import { describe, expect, it } from 'vitest';
import { OWN_CHECKS } from '../../src/app/store/ownChecks';
import { type DataSheet, FAMILIES, type Side } from '../../src/catalog';
import type { Plan } from '../../src/plan';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { at, Driver } from './driver';
import { emptyPlan, straightPlan, withThing } from './plans';

const INCH = 25.4;
const cart = (plan: Plan) => plan.things.find(({ id }) => id === 'cart-1');

/** Drags the cart's centre to a place. */
const dragCart = (plan: Plan, x: number, y: number, options = {}) => new Driver(plan).drag(at(2000, 3500), at(x, y), options);

describe('a thing that is dragged', () => {
  const room = withThing(emptyPlan());
  const near = (value: number) => expect.closeTo(value, 9) as number;
  it.each([
    { name: 'its left side flush to the wall', to: at(420, 3000), gives: { x: near(400) } },
    { name: 'its back flush to the wall', to: at(3000, 230), gives: { y: near(250) } },
    { name: 'into a corner', to: at(7580, 4770), gives: { x: near(7600), y: near(4750) } },
  ])('catches $name', ({ to, gives }) => {
    expect(cart(dragCart(room, to.x, to.y).plan)).toMatchObject(gives);
  });

  const two = withThing(room, { id: 'cart-2', x: 5000, y: 3000 });
  it.each([
    { name: 'flush beside', to: at(4180, 3100), gives: { x: near(4200) }, kind: 'flush' },
    { name: 'in line with its middle', to: at(3500, 3020), gives: { y: near(3000) }, kind: 'centred' },
    { name: 'below it, centred', to: at(5020, 4000), gives: { x: near(5000) }, kind: 'centred' },
  ])('catches another: $name', ({ to, gives, kind }) => {
    const driver = new Driver(two).down(at(2000, 3500)).move(to);
    expect(driver.state.preview?.guides.map((guide) => guide.kind)).toContain(kind);
    expect(cart(driver.up(to).plan)).toMatchObject(gives);
  });

  it('keeps distances to the nearest wall in whole inches at this zoom', () => {
    const thing = cart(dragCart(room, 3007, 3004).plan);
    const [left, below] = [(thing?.x ?? 0) - 400, 5000 - (thing?.y ?? 0) - 250];
    expect(left / INCH).toBeCloseTo(Math.round(left / INCH), 9);
    expect(below / INCH).toBeCloseTo(Math.round(below / INCH), 9);
  });

  it('keeps to 50 mm in a metric plan at this zoom, and to 10 mm nearer by', () => {
    const metric = { ...room, settings: { ...room.settings, units: 'metric' as const } };
    expect(((cart(dragCart(metric, 3007, 3004).plan)?.x ?? 0) - 400) % 50).toBeCloseTo(0, 9);
    const near = new Driver(metric, 0.4).drag(at(2000, 3500), at(3007, 3004));
    expect(cart(near.plan)?.x).toBeCloseTo(3010, 9);
  });

  it('with alt it goes exactly where the pointer goes', () => {
    expect(cart(dragCart(room, 3007, 3004, { alt: true }).plan)).toMatchObject({ x: 3007, y: 3004 });
  });

  it('reads the distances to what is around it', () => {
    const driver = new Driver(room).down(at(2000, 3500)).move(at(3000, 3000), { alt: true });
    expect(driver.state.preview?.readouts.map(({ value }) => Math.round(value))).toEqual([4600, 2600, 1750, 2750]);
  });

  it('snaps square to itself in a room that stands askew', () => {
    const turned = { ...room, room: { ...room.room, openings: [], outline: turnedSquare(4000, 30) } };
    const plan = { ...turned, things: [{ ...room.things[0]!, x: 0, y: 0, rotationDeg: 30 }] };
    // Along its own x, 2000 mm to the wall from the middle: its edge is flush at 1600.
    const [c, s] = [Math.cos(Math.PI / 6), Math.sin(Math.PI / 6)];
    const driver = new Driver(plan).drag(at(0, 0), at(1585 * c, 1585 * s));
    expect((cart(driver.plan)?.x ?? 0) * c + (cart(driver.plan)?.y ?? 0) * s).toBeCloseTo(1600, 6);
  });
});

function turnedSquare(side: number, deg: number) {
  const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
  const half = side / 2;
  return [
    [-half, -half],
    [half, -half],
    [half, half],
    [-half, half],
  ].map(([x = 0, y = 0], i) => ({ id: `wall-${i + 1}`, x: x * c - y * s, y: x * s + y * c }));
}

describe('a machine at a wall keeps off it what its service needs', () => {
  const findings = (plan: Plan) => runChecks(deriveScene(plan), OWN_CHECKS);
  const stopsOf = (plan: Plan, check: string) =>
    findings(plan).flatMap(({ id, verdict }) => (verdict === 'stop' && id.startsWith(check) ? [id] : []));
  const distanceAt = (plan: Plan, side: Side) => deriveScene(plan).machines[0]?.sides[side].wallDistance;

  it.each(FAMILIES.map((sheet) => ({ name: sheet.id, sheet })))('$name, put down beside a wall and in a corner', ({ sheet }) => {
    const tool = { tool: 'place-machine', sheet: sheet.id } as const;
    // Near the wall, and within what service needs.
    for (const gap of [sheet.clearances.back + 30, 20, 0, -20]) {
      const { plan } = Driver.with(emptyPlan(), tool).press(at(4000, sheet.depth / 2 + gap));
      expect(distanceAt(plan, 'back')).toBeCloseTo(sheet.clearances.back, 6);
      expect(stopsOf(plan, 'service-clearances:back')).toEqual([]);
    }
    const { plan } = Driver.with(emptyPlan(), tool).press(at(sheet.width / 2 + 50, sheet.depth / 2 + 40));
    expect(distanceAt(plan, 'left')).toBeCloseTo(sheet.clearances.left, 6);
    expect(distanceAt(plan, 'back')).toBeCloseTo(sheet.clearances.back, 6);
    expect(stopsOf(plan, 'service-clearances')).toEqual([]);
  });

  const [family] = FAMILIES;
  const own = (clearances: Partial<DataSheet['clearances']>): Plan => {
    const sheet = { ...(family as DataSheet), id: 'own', clearances: { left: 0, right: 0, front: 0, back: 0, above: 0, ...clearances } };
    const machine = { ...(straightPlan().machines[0] as Plan['machines'][number]), id: 'machine', sheet: 'own', x: 4000, y: 2500 };
    return { ...emptyPlan(), sheets: [sheet], machines: [machine] };
  };
  const { width, depth } = family as DataSheet;
  const dragged = (plan: Plan, x: number, y: number, options = {}) => new Driver(plan).drag(at(4000, 2500), at(x, y), options).plan;

  it.each([
    { name: 'flush where the sheet needs nothing', clearances: {}, to: [4000, depth / 2 + 20], side: 'back', gives: 0 },
    { name: 'its back', clearances: { back: 120 }, to: [4000, depth / 2 + 20], side: 'back', gives: 120 },
    { name: 'its left side', clearances: { left: 150 }, to: [width / 2 + 20, 2500], side: 'left', gives: 150 },
    { name: 'its right side', clearances: { right: 150 }, to: [8000 - width / 2 - 170, 2500], side: 'right', gives: 150 },
    { name: 'one side, the other flush', clearances: { left: 150 }, to: [8000 - width / 2 - 20, 2500], side: 'right', gives: 0 },
  ] as const)('dragged: $name', ({ clearances, to: [x, y], side, gives }) => {
    expect(distanceAt(dragged(own(clearances), x, y), side)).toBeCloseTo(gives, 6);
  });

  it('with alt it goes where the pointer goes', () => {
    expect(distanceAt(dragged(own({ back: 120 }), 4000, depth / 2 + 20, { alt: true }), 'back')).toBeCloseTo(20, 6);
  });

  it('says so with a guide where its back is held', () => {
    const driver = new Driver(own({ back: 120 })).down(at(4000, 2500)).move(at(4010, depth / 2 + 50));
    expect(driver.state.preview?.guides).toContainEqual(
      expect.objectContaining({ kind: 'clearance', from: expect.objectContaining({ y: expect.closeTo(120, 6) }) }),
    );
  });

  it.each([0, 90, 180, 270, 30])('turned by %i° with its room', (deg) => {
    const plan = own({ back: 120 });
    const outline = turnedSquare(4000, deg);
    const machine = { ...(plan.machines[0] as Plan['machines'][number]), x: 0, y: 0, rotationDeg: deg };
    const turned = { ...plan, room: { ...plan.room, openings: [], outline }, machines: [machine] };
    const [c, s] = [Math.cos((deg * Math.PI) / 180), Math.sin((deg * Math.PI) / 180)];
    const up = 2000 - depth / 2 - 60;
    expect(distanceAt(new Driver(turned).drag(at(0, 0), at(up * s, -up * c)).plan, 'back')).toBeCloseTo(120, 6);
  });

  it.each(['straight', 'left-front', 'right-front'] as const)(
    'with its whole line, %s: the tables are not pushed into the wall',
    (configuration) => {
      const line = { configuration, hand: 'left-to-right' } as const;
      for (const gap of [20, 110, 160]) {
        const { plan } = Driver.with(emptyPlan(), { tool: 'place-machine', sheet: family?.id ?? '', line }).press(
          at(4000, depth / 2 + gap),
        );
        expect(plan.machines).toHaveLength(1);
        expect(stopsOf(plan, 'inside-room')).toEqual([]);
        expect(stopsOf(plan, 'service-clearances:back')).toEqual([]);
        // What reaches farthest back, the machine's service or a table's edge, is at the wall.
        const toBack = deriveScene(plan).tables.flatMap(({ outline }) => outline.map(({ y }) => y));
        expect(Math.min((distanceAt(plan, 'back') ?? 0) - 100, ...toBack)).toBeCloseTo(0, 6);
      }
    },
  );
});

describe('a hood that is dragged', () => {
  it('catches the 6 in overhang beyond the machine', () => {
    const plan = straightPlan();
    const hood = plan.hoods[0]!;
    const machine = plan.machines[0]!;
    const edge = at(hood.x + hood.width / 2, hood.y);
    const width = 737;
    const target = machine.x + width / 2 + 152.4;
    const driver = new Driver(plan).press(at(edge.x, hood.y + hood.depth / 2 - 60));
    expect(driver.state.selection).toEqual([hood.id]);
    driver.down(edge).move(at(target + 20, edge.y));
    expect(driver.state.preview?.guides.map(({ kind }) => kind)).toContain('overhang');
    driver.up(at(target + 20, edge.y));
    const after = driver.plan.hoods[0]!;
    expect(after.x + after.width / 2).toBeCloseTo(target, 6);
    expect(after.x - after.width / 2).toBeCloseTo(hood.x - hood.width / 2, 6);
  });

  it('centres over the machine', () => {
    const plan = straightPlan();
    const hood = plan.hoods[0]!;
    const grip = at(hood.x - hood.width / 2, hood.y + hood.depth / 2 - 30);
    const driver = new Driver(plan).drag(grip, at(grip.x + 25, grip.y + 700));
    expect(driver.plan.hoods[0]?.x).toBeCloseTo(plan.machines[0]!.x, 6);
  });
});

describe('turning by the handle', () => {
  const room = withThing(emptyPlan());
  /** The round handle stands 26 px before the front: 130 mm at this zoom. */
  const grip = at(2000, 3500 + 250 + 130);
  const around = (deg: number) => at(2000 - 380 * Math.sin((deg * Math.PI) / 180), 3500 + 380 * Math.cos((deg * Math.PI) / 180));
  it.each([
    { deg: 17, alt: false, gives: 15 },
    { deg: 23, alt: false, gives: 30 },
    { deg: 88, alt: false, gives: 90 },
    { deg: 17, alt: true, gives: 17 },
    { deg: -40, alt: false, gives: -45 },
  ])('$deg° (alt $alt) gives $gives°', ({ deg, alt, gives }) => {
    const driver = new Driver(room).press(at(2000, 3500)).drag(grip, around(deg), { alt });
    expect(cart(driver.plan)?.rotationDeg).toBeCloseTo(gives, 6);
    expect(driver.labels).toEqual(['Turn cart']);
  });
});
