import { describe, expect, it } from 'vitest';
import { FAMILIES } from '../../src/catalog';
import { createLinePlan, LINE_CONFIGURATIONS, mirrorLine, type Plan, transformPlan } from '../../src/plan';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { CHECKS } from '../../src/topics/registry';

const CASES = FAMILIES.flatMap(({ id: family }) =>
  LINE_CONFIGURATIONS.flatMap((configuration) =>
    (['left-to-right', 'right-to-left'] as const).map((hand) => ({ family, configuration, hand })),
  ),
);

/** What is not clear, and how many findings there are. */
function judge(plan: Plan): { worst: string[]; count: number } {
  const findings = runChecks(deriveScene(plan), CHECKS);
  return {
    worst: findings.filter(({ verdict }) => verdict !== 'clear').map(({ id, verdict }) => `${verdict} ${id}`),
    count: findings.length,
  };
}

// A new plan from a family is a line that holds: whoever starts from it starts from nothing wrong.
describe('a new line of every family', () => {
  it.each(CASES)('$family $configuration $hand is clear, turned and mirrored', (options) => {
    const plan = createLinePlan(options);
    const { count } = judge(plan);
    expect(count).toBeGreaterThan(25);
    const seen = [
      plan,
      createLinePlan({ ...options, rotationDeg: 45 }),
      transformPlan(plan, { mirror: true, rotateDeg: 90 }),
      mirrorLine(plan),
    ];
    expect(seen.map(judge)).toEqual(seen.map(() => ({ worst: [], count })));
  });
});
