import { FAMILIES } from '../catalog';
import { createLinePlan, type Machine, type Plan, type Thing } from '../plan';
import { type FigureRule, type Finding, readFigure, runChecks } from '../rules';
import { deriveScene, type Scene } from '../scene';
import { CHECKS, FIGURES } from '../topics/registry';

/**
 * What the registries alone can't say, since it shows only when a plan is looked at: which formulas a figure is worked out with,
 * and which limits a check holds. It is seen on a line of every machine family, straight through and around a corner, with a
 * three-compartment sink beside it.
 */
export interface Samples {
  findings: readonly Finding[];
  /** Ids of formulas by the id of the figure. */
  formulasOf: ReadonlyMap<string, readonly string[]>;
}

export function deriveSamples(): Samples {
  const scenes = FAMILIES.flatMap(({ id }) =>
    (['straight', 'left-front'] as const).map((configuration) =>
      deriveScene(
        withSink(
          withHookUp(createLinePlan({ family: id, configuration, hand: 'left-to-right' })),
          configuration === 'straight' ? 'indirect' : 'direct',
        ),
      ),
    ),
  );
  return {
    findings: scenes.flatMap((scene) => runChecks(scene, CHECKS)),
    formulasOf: new Map(FIGURES.map((rule) => [rule.id, formulasIn(scenes, rule)])),
  };
}

const formulasIn = (scenes: readonly Scene[], figure: FigureRule): string[] => [
  ...new Set(scenes.flatMap((scene) => readFigure(figure, scene).flatMap(({ how }) => (how === null ? [] : (how.record ?? []))))),
];

/** A cycle of a minute and a booster that stands apart, so that what stands on such is worked out too. */
const withHookUp = (plan: Plan): Plan => ({
  ...plan,
  machines: plan.machines.map((machine) => ({
    ...machine,
    hookUp: {
      ...machine.hookUp,
      ...BOOSTER,
      plateRecord: [
        { at: 0, tempC: 40 },
        { at: 60, tempC: 75 },
      ],
    },
  })),
});

const BOOSTER: Partial<Machine['hookUp']> = { boosterPlace: 'apart', boosterWay: 914.4, boosterBelow: 203.2, boosterOffWall: true };

/** So that what is measured on a sink is measured too. It stands beyond the walls, where it changes nothing else. */
function withSink(plan: Plan, waste: Basins['waste']): Plan {
  const x = Math.max(...plan.room.outline.map((corner) => corner.x));
  const sink = { ...SINK, x: x + SINK.width, y: plan.room.outline[0]?.y ?? 0, basins: { ...BASINS, waste } };
  return { ...plan, things: [...plan.things, sink] };
}

type Basins = NonNullable<Thing['basins']>;

const SINK: Omit<Thing, 'x' | 'y' | 'basins'> = {
  id: 'sink',
  kind: 'three-compartment-sink',
  name: '',
  rotationDeg: 0,
  width: 2286,
  depth: 711,
  height: 900,
  ware: 'none',
  clearBelow: 152.4,
  sealed: true,
};

const BASINS: Basins = {
  count: 3,
  length: 457.2,
  width: 457.2,
  depth: 304.8,
  leftBoard: 457.2,
  rightBoard: 457.2,
  waste: 'indirect',
  sanitizing: 'hot-water',
  heater: false,
};
