import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { OWN_CHECKS } from '../../src/app/store/ownChecks';
import { drawDimensions, drawPlan } from '../../src/drawing';
import { fieldAt, fieldsFor } from '../../src/editor';
import { createLinePlan, EXAMPLES, type Plan, parsePlan } from '../../src/plan';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';

const examples = EXAMPLES.map(({ name }) => {
  const read = parsePlan(readFileSync(`public/examples/${name}.rackway.json`, 'utf8'));
  if (!read.ok) throw new Error(name);
  return { name, plan: read.plan };
});

/** The plan as one who has measured nothing would have it. */
function unknownOf(plan: Plan): Plan {
  return {
    ...plan,
    room: { ...plan.room, ceilingHeight: null },
    machines: plan.machines.map((machine) => ({ ...machine, electrical: null })),
    tables: plan.tables.map((table) => ({ ...table, deck: { kind: 'fall', jointHeight: null, fall: null } })),
    hoods: plan.hoods.map((hood) => ({ ...hood, lipHeight: null })),
    runs: plan.runs.map((run) => ({ ...run, fan: run.fan && { ...run.fan, cordWay: null, drainHole: null, attitude: 'on-side' } })),
    supply: { hotWaterC: null, coldWaterC: null, flowPressureKpa: null, voltage: null, phase: null, toGroundV: null },
    order: { ...plan.order, configuration: null, hand: null, voltage: null, phase: null, vent: null, clearOpening: null },
  };
}

const families = ['recirculating-hot-water', 'direct-vent', 'heat-recovery'].map((family) => ({
  name: family,
  plan: createLinePlan({ family, configuration: 'straight', hand: 'left-to-right' }),
}));

describe.each([...examples, ...families])('$name', ({ plan }) => {
  it('every missing input that a check asks for has a field to type it into', () => {
    const unknown = unknownOf(plan);
    const scene = deriveScene(unknown);
    const asks = runChecks(scene, OWN_CHECKS).flatMap(({ ask }) => ask ?? []);
    expect(asks.length).toBeGreaterThan(0);
    // A whole section may be asked for: then its card is the place.
    const hasPlace = (path: (string | number)[]) =>
      path.length === 1 ? fieldsFor(unknown, scene, `@${path[0]}`).length > 0 : fieldAt(unknown, scene, path) !== null;
    expect(asks.filter(({ path }) => !hasPlace(path))).toEqual([]);
  });

  it('every number on the drawing that can be pressed has a field behind it', () => {
    const scene = deriveScene(plan);
    const options = { units: 'us', scaleDenominator: 30 } as const;
    const paths = [...drawPlan(scene, options), ...drawDimensions(scene, options)].flatMap((prim) =>
      prim.kind === 'text' && prim.edit ? [prim.edit] : [],
    );
    expect(paths.length).toBeGreaterThan(0);
    expect(paths.filter((path) => fieldAt(plan, scene, path) === null).map((path) => path.join('.'))).toEqual([]);
  });
});
