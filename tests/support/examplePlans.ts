import { readFileSync } from 'node:fs';
import { EXAMPLES, type Plan, parsePlan } from '../../src/plan';

/** Every example that ships, read as the program reads it. */
export const examplePlans = (): { name: string; plan: Plan }[] => EXAMPLES.map(({ name }) => ({ name, plan: examplePlan(name) }));

export function examplePlan(name: string): Plan {
  const result = parsePlan(readFileSync(`public/examples/${name}.rackway.json`, 'utf8'));
  if (!result.ok) throw new Error(`example ${name}: ${result.problem.reason}`);
  return result.plan;
}
