import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, press } from './paper.ts';

/** The tray cart of the example room, on the paper. */
const CART = { x: 1150, y: 2450 };

const cartOf = async (page: Page) => {
  const cart = (await keptPlan(page)).things.find(({ id }) => id === 'tray-cart');
  return cart && { x: cart.x, y: cart.y, rotationDeg: cart.rotationDeg };
};

const countOf = async (page: Page) => (await keptPlan(page)).things.length;

it('arrows nudge, with Shift ten times as far; R turns; in a field they are the field’s own', async () => {
  const page = await openPage();
  await press(page, CART);
  const start = await cartOf(page);
  if (!start) throw new Error('the example has no tray cart');
  await page.keyboard.press('ArrowRight');
  const one = ((await cartOf(page))?.x ?? 0) - start.x;
  expect(one).toBeGreaterThan(0);
  await page.keyboard.press('Shift+ArrowLeft');
  await page.keyboard.press('Shift+ArrowDown');
  const after = await cartOf(page);
  expect((after?.x ?? 0) - start.x).toBeCloseTo(one - 10 * one, 6);
  expect((after?.y ?? 0) - start.y).toBeCloseTo(10 * one, 6);
  await page.keyboard.press('r');
  expect((await cartOf(page))?.rotationDeg).toBe(start.rotationDeg + 90);
  await page.keyboard.press('Shift+R');
  expect((await cartOf(page))?.rotationDeg).toBe(start.rotationDeg);
  await page.getByRole('button', { name: 'Turn', exact: true }).click();
  expect((await cartOf(page))?.rotationDeg).toBe(start.rotationDeg + 90);
  const before = await keptPlan(page);
  await page.getByLabel('Own name').focus();
  for (const key of ['r', 'Delete', 'Backspace', 'ArrowLeft', 'Control+a', 'Control+c', 'Control+v', 'Control+d'])
    await page.keyboard.press(key);
  await page.keyboard.press('Escape');
  expect(await keptPlan(page)).toEqual(before);
});

it('copy, paste, cut, duplicate and delete; each is undone and redone by button and by keys', async () => {
  const page = await openPage();
  const before = await keptPlan(page);
  const count = before.things.length;
  await press(page, CART);
  const counts = [];
  for (const keys of ['Control+c', 'Control+v', 'Control+v', 'Control+x', 'Control+v', 'Control+d', 'Delete']) {
    await page.keyboard.press(keys);
    counts.push((await countOf(page)) - count);
  }
  expect(counts).toEqual([0, 1, 2, 1, 2, 3, 2]);
  await screenshot(page, 'pasted');
  const after = await keptPlan(page);
  // Copies lie beside each other, not on top.
  expect(new Set(after.things.map(({ x, y }) => `${x} ${y}`)).size).toBe(after.things.length);
  const [undo, redo] = [page.getByRole('button', { name: 'Undo' }), page.getByRole('button', { name: 'Redo' })];
  await undo.click();
  await undo.click();
  expect(await countOf(page)).toBe(count + 2);
  await redo.click();
  expect(await countOf(page)).toBe(count + 3);
  for (let step = 0; step < 5; step++) await page.keyboard.press('Control+z');
  expect(await keptPlan(page)).toEqual(before);
  expect(await undo.isDisabled()).toBe(true);
  for (let step = 0; step < 6; step++) await page.keyboard.press('Control+Shift+z');
  expect(await keptPlan(page)).toEqual(after);
  expect(await redo.isDisabled()).toBe(true);
});

it('a pasted line keeps its tables at its machine', async () => {
  const page = await openPage();
  await page.locator('.surface').focus();
  await page.keyboard.press('Control+a');
  await page.keyboard.press('Control+c');
  await page.keyboard.press('Control+v');
  const { machines, tables } = await keptPlan(page);
  expect(machines).toHaveLength(2);
  const copy = machines[1]?.id;
  expect(tables.filter(({ place }) => place.kind === 'joined' && place.machine === copy)).toHaveLength(2);
});

it('Tab walks the line from drop-off to storage, and the focus can leave the paper', async () => {
  const page = await openPage();
  await page.locator('.surface').focus();
  const walked = [];
  for (let step = 0; step < 7; step++) {
    await page.keyboard.press('Tab');
    walked.push(await page.locator('.station[aria-pressed="true"] .name').innerText());
  }
  expect(walked).toEqual(['Drop-off', 'Scrap', 'Pre-rinse', 'Soiled landing', 'Machine', 'Clean landing', 'Storage']);
  await page.keyboard.press('Shift+Tab');
  expect(await page.locator('.station[aria-pressed="true"] .name').innerText()).toBe('Clean landing');
  const isOnPaper = () => page.evaluate(() => document.activeElement?.className === 'surface');
  for (let step = 0; step < 60 && (await isOnPaper()); step++) await page.keyboard.press('Tab');
  expect(await isOnPaper()).toBe(false);
});
