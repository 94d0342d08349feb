import { FAMILIES } from '../catalog';
import { type Finding, runChecks } from '../checks';
import { FIGURES, readHow, readingsOf } from '../figures';
import { createLinePlan, type Plan } from '../plan';
import { deriveScene, type Scene } from '../scene';
import { ALL_CHECKS } from '../services';

/**
 * What the registries alone can't say, since it shows only when a plan is looked at: which formulas a figure is worked out with,
 * and which limits a check holds. It is seen on a line of every machine family, straight through and around a corner.
 */
export interface Samples {
  findings: readonly Finding[];
  /** Ids of formulas by the id of the figure. */
  formulasOf: ReadonlyMap<string, readonly string[]>;
}

export function deriveSamples(): Samples {
  const scenes = FAMILIES.flatMap(({ id }) =>
    (['straight', 'left-front'] as const).map((configuration) =>
      deriveScene(withRecord(createLinePlan({ family: id, configuration, hand: 'left-to-right' }))),
    ),
  );
  return {
    findings: scenes.flatMap((scene) => runChecks(scene, ALL_CHECKS)),
    formulasOf: new Map(FIGURES.map(({ id }) => [id, formulasIn(scenes, id)])),
  };
}

const formulasIn = (scenes: readonly Scene[], figure: string): string[] => [
  ...new Set(scenes.flatMap((scene) => readingsOf(scene, figure).flatMap(({ how }) => (how === null ? [] : (readHow(how).record ?? []))))),
];

/** A cycle of a minute, so that what stands on such a record is worked out too. */
const withRecord = (plan: Plan): Plan => ({
  ...plan,
  machines: plan.machines.map((machine) => ({
    ...machine,
    hookUp: {
      ...machine.hookUp,
      plateRecord: [
        { at: 0, tempC: 40 },
        { at: 60, tempC: 75 },
      ],
    },
  })),
});
