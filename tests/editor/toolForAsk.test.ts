import { expect, test } from 'vitest';
import { fieldAt, toolForAsk } from '../../src/editor';
import type { Plan } from '../../src/plan';
import { deriveFigures, runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { CHECKS, FIGURES } from '../../src/topics/registry';
import { rule as waterLineLength } from '../../src/topics/water/figures/water-line-length';
import { examplePlans } from '../support/examplePlans';

/** An example of whose things one kind is not drawn. */
const without: Record<string, (plan: Plan) => void> = {
  openings: ({ room }) => room.openings.splice(0),
  'floor drains': ({ room }) => room.floorDrains.splice(0),
  stubs: ({ room }) => room.stubs.splice(0),
  things: ({ things }) => things.splice(0),
  runs: ({ runs }) => runs.splice(0),
};

/** Where a thing is asked for that is not there, no field could be typed into, and nothing could be shown. */
test.each(Object.keys(without))('without its %s every question has its field, or the tool that answers it', (kind) => {
  const asks = examplePlans().flatMap(({ plan }) => {
    const bare = structuredClone(plan);
    without[kind]?.(bare);
    const scene = deriveScene(bare);
    const asked = [...runChecks(scene, CHECKS), ...deriveFigures(scene, FIGURES)].flatMap(({ ask }) => (ask ? [ask] : []));
    return asked.filter(({ path }) => path.at(-1) !== 'plateRecord').map((ask) => ({ ask, field: fieldAt(bare, scene, ask.path) }));
  });
  expect(asks.filter(({ ask, field }) => field === null && toolForAsk(ask) === null)).toEqual([]);
  expect(asks.some(({ ask, field }) => field === null && toolForAsk(ask) !== null)).toBe(true);
});

test.each(['cold', 'hot'] as const)('a machine that is to have %s water gets a stub of it', (water) => {
  const tools = examplePlans().flatMap(({ plan }) => {
    const bare = structuredClone(plan);
    bare.room.stubs.splice(0);
    for (const { hookUp } of bare.machines) hookUp.water = water;
    const asks = deriveFigures(deriveScene(bare), [waterLineLength]).flatMap(({ ask }) => (ask ? [ask] : []));
    return asks.filter(({ path }) => path.join('.') === 'room.stubs').map(toolForAsk);
  });
  expect(tools.length).toBeGreaterThan(0);
  for (const tool of tools) expect(tool).toEqual({ tool: 'add-thing', add: { kind: 'stub', stub: `${water}-water` } });
});
