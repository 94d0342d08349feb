import { describe, it } from 'vitest';
import { LINE_CONFIGURATIONS, type LineHand } from '../../src/plan';
import { findRepairs, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { CHECKS } from '../../src/topics/registry';
import { expectRepaired } from '../support/cases';
import { FAULTS, faultedPlan } from '../support/faults';

const HANDS: readonly LineHand[] = ['left-to-right', 'right-to-left'];

/** A repair betters its finding and brings no stop that was not there, whatever the line and its fault. */
const rows = LINE_CONFIGURATIONS.flatMap((configuration) =>
  HANDS.flatMap((hand) =>
    FAULTS.filter(({ cornerOnly }) => cornerOnly !== true || configuration !== 'straight').flatMap((fault) => {
      const plan = faultedPlan({ configuration, hand }, fault);
      const scene = deriveScene(plan);
      const found = runChecks(scene, CHECKS).filter(({ repairs }) => repairs.length > 0);
      return found.flatMap((finding) =>
        findRepairs(scene, CHECKS, finding.id).map((repair) => ({
          configuration,
          hand,
          fault: fault.name,
          id: repair.id,
          plan,
          finding,
          repair,
        })),
      );
    }),
  ),
);

describe('a repair betters its finding and brings no new stop', () => {
  it.each(rows)('$configuration, $hand, $fault: $id', ({ plan, finding, repair }) => expectRepaired(plan, finding, repair));
});
