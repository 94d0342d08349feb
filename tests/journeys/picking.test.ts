import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { edit, type Plan } from '../../src/plan/index.ts';
import { deriveScene } from '../../src/scene/index.ts';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { drag, keptPlan, moveTo, onScreen, press, type ScreenPoint } from './paper.ts';

/** What the pointer shows that it would do. */
const cursor = (page: Page) => page.locator('.surface').evaluate((surface) => getComputedStyle(surface).cursor);

/** Name of what is chosen, as its card has it. */
const chosen = (page: Page) => page.getByRole('tabpanel').getByRole('heading').first().innerText();

async function pressAt(page: Page, { x, y }: ScreenPoint): Promise<void> {
  await page.mouse.move(x, y, { steps: 3 });
  await page.mouse.down();
  await page.mouse.up();
}

/** A cart alone on the floor of a plain room, so that nothing else lies near. */
const room: Plan = edit(examplePlan('school-corner'), 'cart alone', (draft) => {
  const [thing] = draft.things;
  draft.machines = [];
  draft.tables = [];
  draft.hoods = [];
  draft.runs = [];
  draft.things = thing ? [{ ...thing, id: 'cart', kind: 'cart', name: '', x: 2400, y: 2200, width: 900, depth: 600, rotationDeg: 0 }] : [];
}).plan;

it('the pointer shows what it would take: a thing, a handle and how it moves, a number, nothing', async () => {
  const page = await openPage({ plan: room });
  await moveTo(page, { x: 2400, y: 2200 });
  expect(await cursor(page)).toBe('pointer');
  await moveTo(page, { x: 2400, y: 3100 });
  expect(await cursor(page)).toBe('auto');
  await press(page, { x: 2400, y: 2200 });
  for (const [x, y, shape] of [
    [2850, 2200, 'ew-resize'],
    [2400, 1900, 'ns-resize'],
    [2850, 2500, 'nwse-resize'],
    [1950, 2500, 'nesw-resize'],
  ] as const) {
    await moveTo(page, { x, y });
    expect([x, y, await cursor(page)]).toEqual([x, y, shape]);
  }
  await screenshot(page, 'picking-handles');
  await moveTo(page, { x: 2400, y: 3100 });
  expect(await cursor(page)).toBe('auto');
});

it('a handle is dragged as soon as its thing is chosen, and the thing under it stays', async () => {
  const page = await openPage({ plan: room });
  await press(page, { x: 2400, y: 2200 });
  await drag(page, { x: 2850, y: 2200 }, { x: 3150, y: 2200 });
  const [cart] = (await keptPlan(page)).things;
  expect(cart?.width).toBeGreaterThan(1100);
  expect((cart?.x ?? 0) - (cart?.width ?? 0) / 2).toBeCloseTo(1950, 3);
  // Its new edge is where it is taken now.
  await drag(page, { x: 1950 + (cart?.width ?? 0), y: 2200 }, { x: 2850, y: 2200 });
  expect((await keptPlan(page)).things[0]?.width).toBeLessThan(1000);
});

it('a thing is taken where it then is, after it was moved', async () => {
  const page = await openPage({ plan: room });
  await drag(page, { x: 2400, y: 2200 }, { x: 2400, y: 3000 });
  await page.keyboard.press('Escape');
  const [cart] = (await keptPlan(page)).things;
  expect(cart?.y).toBeGreaterThan(2900);
  await moveTo(page, { x: 2400, y: 1950 });
  expect(await cursor(page)).toBe('auto');
  await moveTo(page, { x: 2400, y: 3100 });
  expect(await cursor(page)).toBe('pointer');
});

it('a wall is taken on its band; pressed again, the place gives what lies below', async () => {
  const plan = examplePlan('school-corner');
  const page = await openPage({ plan });
  const [wall] = deriveScene(plan).room.walls;
  if (!wall) throw new Error('the room has no wall');
  // Clear of openings and of what stands before it.
  await press(page, {
    x: wall.a.x + wall.direction.x * 400 - wall.inward.x * 50,
    y: wall.a.y + wall.direction.y * 400 - wall.inward.y * 50,
  });
  expect(await chosen(page)).toMatch(/^Wall/);
  const table = deriveScene(plan).tables.find(({ fittings }) => fittings.length > 0);
  const fitting = table?.fittings.find(({ fitting: { kind } }) => kind === 'sink');
  if (!table || !fitting) throw new Error('no table has a sink');
  const at = await onScreen(page, fitting.centre.x, fitting.centre.y + 60);
  await pressAt(page, at);
  const first = await chosen(page);
  await pressAt(page, at);
  const second = await chosen(page);
  expect(first).not.toBe(second);
  expect(second.toLowerCase()).toContain('table');
});

it('a finger takes a duct from farther off than a mouse', async () => {
  const plan = examplePlan('care-home-direct-vent');
  const placed = deriveScene(plan).runs[0];
  const [a, b] = (placed?.points ?? []).slice(-2);
  if (!placed || !a || !b) throw new Error('the plan has no run');
  const middle = { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
  const isAcross = Math.abs(b.x - a.x) > Math.abs(b.y - a.y);
  for (const [touch, takes] of [
    [true, true],
    [false, false],
  ] as const) {
    const page = await openPage({ width: 1024, height: 768, touch, plan });
    const at = await onScreen(page, middle.x, middle.y);
    const [scale = 1] = ((await page.locator('.surface').getAttribute('data-view')) ?? '').split(' ').map(Number);
    // A fingertip reaches 18 px, a mouse 6 or the duct itself.
    const away = Math.max(14, (placed.run.diameter / 2) * scale + 4);
    const beside = isAcross ? { x: at.x, y: at.y + away } : { x: at.x + away, y: at.y };
    if (touch) await page.touchscreen.tap(beside.x, beside.y);
    else await pressAt(page, beside);
    const name = await chosen(page);
    expect([touch, /run/i.test(name)]).toEqual([touch, takes]);
    await page.context().close();
  }
});
