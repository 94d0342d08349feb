import { describe, expect, it } from 'vitest';
import { createLinePlan, createPlan, type Plan, parsePlan, planSchema, renderPlanText } from '../../src/plan';

const plans: [string, Plan][] = [
  ['an empty plan', createPlan()],
  ['a line', createLinePlan({ family: 'direct-vent', configuration: 'right-front', hand: 'right-to-left', rotationDeg: 12.34 })],
];

describe('renderPlanText', () => {
  it.each(plans)('%s: read and written again it is the same, byte for byte', (_name, plan) => {
    const text = renderPlanText(plan);
    const read = parsePlan(text);
    expect(read.ok && renderPlanText(read.plan)).toBe(text);
    expect(text.endsWith('}\n')).toBe(true);
  });

  it.each(plans)('%s: keys come in the order of the schema, whatever order they were made in', (_name, plan) => {
    const reversed = JSON.parse(JSON.stringify(plan), (_key, value: unknown) =>
      typeof value === 'object' && value !== null && !Array.isArray(value) ? Object.fromEntries(Object.entries(value).reverse()) : value,
    ) as Plan;
    expect(Object.keys(reversed)[0]).toBe('sheets');
    expect(renderPlanText(reversed)).toBe(renderPlanText(plan));
    expect(Object.keys(JSON.parse(renderPlanText(reversed)) as object)).toEqual(Object.keys(planSchema.shape));
  });

  it('writes small objects on a line', () => {
    expect(renderPlanText(createPlan())).toContain('\n      { "id": "wall-1", "x": 0, "y": 0 },\n');
    expect(
      renderPlanText(createPlan())
        .split('\n')
        .every((line) => line.length <= 125),
    ).toBe(true);
  });
});
