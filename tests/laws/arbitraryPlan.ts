import fc from 'fast-check';
import { FAMILIES } from '../../src/catalog';
import {
  addFitting,
  addLeg,
  addTable,
  addThing,
  createId,
  createLinePlan,
  duplicateItems,
  flipTable,
  freeTable,
  joinTable,
  LINE_CONFIGURATIONS,
  moveItems,
  ownDataSheet,
  type Plan,
  placeItem,
  type Recipe,
  removeItems,
  reverseHand,
  rotateItems,
  setConfiguration,
  setControls,
  setLegLength,
  surveyDeck,
  THING_KINDS,
  tryEdit,
  UNKNOWN_MAKE,
  UNKNOWN_THING,
} from '../../src/plan';

/** A line of any family, configuration, hand and rotation. */
export const arbitraryLine: fc.Arbitrary<Plan> = fc
  .record({
    family: fc.constantFrom(...FAMILIES.map(({ id }) => id)),
    configuration: fc.constantFrom(...LINE_CONFIGURATIONS),
    hand: fc.constantFrom('left-to-right' as const, 'right-to-left' as const),
    rotationDeg: fc.oneof(fc.constantFrom(0, 90, 180, -90), fc.integer({ min: -179, max: 180 })),
  })
  .map(createLinePlan);

/** An edit that a person might make. `pick` chooses among what the plan has when the edit is made. */
export interface ArbitraryEdit {
  name: string;
  make: (plan: Plan) => Recipe;
}

const pick = <T>(list: readonly T[], index: number, none: T): T => list[index % Math.max(1, list.length)] ?? none;
const index = fc.nat(20);
const by = fc.record({ x: fc.integer({ min: -900, max: 900 }), y: fc.integer({ min: -900, max: 900 }) });
const angle = fc.integer({ min: -180, max: 180 });
const known = (max: number) => fc.option(fc.nat(max));
const fact = fc.option(fc.boolean());
const hookUp = fc.record({
  supplyGap: known(100),
  boosterPlace: fc.option(fc.constantFrom('inside' as const, 'apart' as const)),
  boosterWay: known(3000),
  boosterBelow: known(300),
  boosterOffWall: fact,
});
const row = <T>(name: string, facts: fc.Arbitrary<T>, make: (plan: Plan, facts: T) => Recipe): fc.Arbitrary<ArbitraryEdit> =>
  facts.map((value) => ({ name, make: (plan) => make(plan, value) }));

/** Anything that bears an id and can be taken hold of. */
const anyId = (plan: Plan, at: number): string =>
  pick(
    [...plan.machines, ...plan.tables, ...plan.things, ...plan.hoods, ...plan.runs, ...plan.room.openings, ...plan.room.outline].map(
      ({ id }) => id,
    ),
    at,
    'none',
  );
const aTable = (plan: Plan, at: number): string =>
  pick(
    plan.tables.map(({ id }) => id),
    at,
    'none',
  );
const aMachine = (plan: Plan, at: number): string =>
  pick(
    plan.machines.map(({ id }) => id),
    at,
    'none',
  );

/** Any of the edits of the plan, with any sensible facts. */
export const arbitraryEdit: fc.Arbitrary<ArbitraryEdit> = fc.oneof(
  row('move', fc.tuple(index, index, by), (plan, [a, b, d]) => moveItems([anyId(plan, a), anyId(plan, b)], d)),
  row('rotate', fc.tuple(index, angle), (plan, [a, deg]) => rotateItems([anyId(plan, a)], deg)),
  row('place', fc.tuple(index, by, angle), (plan, [a, at, rotationDeg]) => placeItem(anyId(plan, a), { ...at, rotationDeg })),
  row('remove', index, (plan, a) => removeItems([anyId(plan, a)])),
  row('duplicate', fc.tuple(index, index, by), (plan, [a, b, d]) => duplicateItems([anyId(plan, a), anyId(plan, b)], d)),
  row('free', index, (plan, a) => freeTable(aTable(plan, a))),
  row('flip', index, (plan, a) => flipTable(aTable(plan, a))),
  row('join', fc.tuple(index, index, fc.constantFrom('left' as const, 'right' as const, 'front' as const)), (plan, [a, b, side]) =>
    plan.machines.length === 0 ? freeTable('none') : joinTable(aTable(plan, a), aMachine(plan, b), side),
  ),
  row('leg', fc.tuple(index, fc.integer({ min: 100, max: 2000 }), angle), (plan, [a, length, turn]) =>
    addLeg(aTable(plan, a), { length, turnDeg: Math.max(-135, Math.min(135, turn)) }),
  ),
  row('length', fc.tuple(index, fc.integer({ min: 100, max: 4000 })), (plan, [a, length]) => setLegLength(aTable(plan, a), 0, length)),
  row('survey', index, (plan, a) => surveyDeck(aTable(plan, a))),
  row('configure', fc.tuple(index, fc.constantFrom(...LINE_CONFIGURATIONS)), (plan, [a, to]) => setConfiguration(aMachine(plan, a), to)),
  row('reverse', index, (plan, a) => reverseHand(aMachine(plan, a))),
  row('own sheet', fc.tuple(index, fc.integer({ min: 900, max: 1200 })), (plan, [a, width]) => (draft) => {
    ownDataSheet([aMachine(plan, a)])(draft);
    const sheet = draft.sheets.at(-1);
    if (sheet !== undefined) sheet.width = width;
  }),
  row('controls', fc.tuple(index, fc.constantFrom('front-left', 'front-right')), (plan, [a, to]) => setControls(aMachine(plan, a), to)),
  row('thing', fc.tuple(fc.constantFrom(...THING_KINDS), by), (plan, [kind, at]) =>
    addThing({
      id: createId(plan, kind),
      kind,
      name: '',
      ...at,
      rotationDeg: 0,
      width: 600,
      depth: 500,
      height: 900,
      ware: 'none',
      ...UNKNOWN_THING,
    }),
  ),
  row('trough', fc.record({ troughDepth: known(500), troughCovers: known(4), troughInlets: known(4) }), (_, trough) => (draft) => {
    for (const fitting of draft.tables.flatMap(({ fittings }) => fittings)) if (fitting.kind === 'scrap') Object.assign(fitting, trough);
  }),
  row('bowl', fc.tuple(fc.constantFrom('indirect', 'direct', null), fact), (_, [waste, heater]) => (draft) => {
    for (const fitting of draft.tables.flatMap(({ fittings }) => fittings)) if (fitting.kind === 'sink') fitting.waste = waste;
    for (const { basins } of draft.things) if (basins !== null) Object.assign(basins, { waste, heater });
  }),
  row('hook up', fc.tuple(index, hookUp), (_, [a, change]) => (draft) => {
    const machine = draft.machines[a % Math.max(1, draft.machines.length)];
    if (machine !== undefined) Object.assign(machine.hookUp, change);
  }),
  row('seal', fc.tuple(index, fact), (_, [a, sealed]) => (draft) => {
    const thing = draft.things[a % Math.max(1, draft.things.length)];
    if (thing !== undefined) thing.sealed = sealed;
  }),
  row('table', by, (plan, at) =>
    addTable({
      id: createId(plan, 'table'),
      role: 'clean',
      place: { kind: 'free', ...at, headingDeg: 45 },
      legs: [{ length: 1200, turnDeg: 0 }],
      depth: 762,
      rackLineFromEdge: 273,
      operatorSide: 'left',
      backsplash: 0,
      deck: { kind: 'heights', heights: [null, null] },
      make: UNKNOWN_MAKE,
      fittings: [],
    }),
  ),
  row('fitting', index, (plan, a) => addFitting(aTable(plan, a), { id: createId(plan, 'landing'), kind: 'landing', at: 50, length: 100 })),
);

/** A line after up to eight edits; what would leave an unsound plan was refused. */
export const arbitraryPlan: fc.Arbitrary<Plan> = fc
  .tuple(arbitraryLine, fc.array(arbitraryEdit, { maxLength: 8 }))
  .map(([line, edits]) => edits.reduce(applyIfSound, line));

/** The plan after an edit, or the plan itself when the edit is refused. */
export function applyIfSound(plan: Plan, { name, make }: ArbitraryEdit): Plan {
  const result = tryEdit(plan, name, make(plan));
  return result.ok ? result.transaction.plan : plan;
}
