import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { createPlan } from '../../src/plan/index.ts';
import { openPage, screenshot } from './openPage.ts';
import { drag, field, keptPlan, moveTo, press, seePaper, takeTool, typeInto } from './paper.ts';

const FT = 304.8;

const emptyRoom = () => openPage({ plan: createPlan() });

const cornersOf = async (page: Page) =>
  (await keptPlan(page)).room.outline.map(({ x, y }) => [Math.round(x * 10) / 10, Math.round(y * 10) / 10]);

it('walls are drawn corner after corner, with lengths typed as people type them', async () => {
  const page = await emptyRoom();
  await takeTool(page, 'Draw the walls');
  await press(page, { x: 0, y: 0 });
  await moveTo(page, { x: 3000, y: 10 });
  await page.keyboard.type(`16' 6"`);
  // What has been typed is seen.
  expect(await page.locator('.hint').innerText()).toContain(`length of the wall: 16' 6"`);
  await page.keyboard.press('Enter');
  await moveTo(page, { x: 16.5 * FT, y: 2000 });
  await page.keyboard.type('3.6 m');
  await page.keyboard.press('Enter');
  await moveTo(page, { x: 2000, y: 3600 });
  await page.keyboard.type('6 ft');
  await page.keyboard.press('Enter');
  await screenshot(page, 'drawing-walls');
  await moveTo(page, { x: 10.5 * FT, y: 2600 });
  await page.keyboard.type('40 in');
  await page.keyboard.press('Enter');
  // Aligned under the first corner, then back to it.
  await moveTo(page, { x: 20, y: 3600 - 1016 });
  await press(page, { x: 20, y: 3600 - 1016 });
  await page.keyboard.press('Enter');
  expect(await cornersOf(page)).toEqual([
    [0, 0],
    [5029.2, 0],
    [5029.2, 3600],
    [3200.4, 3600],
    [3200.4, 2584],
    [0, 2584],
  ]);
  await screenshot(page, 'walls-drawn');
  // The whole drawing is one step.
  await page.keyboard.press('Control+z');
  expect(await cornersOf(page)).toHaveLength(4);
});

it('a rectangle is dragged; walls that cross are refused and change nothing', async () => {
  const page = await emptyRoom();
  await takeTool(page, 'Draw the walls');
  await drag(page, { x: 0, y: 0 }, { x: 4000, y: 3000 });
  const drawn = await cornersOf(page);
  expect(drawn[2]?.[0]).toBeCloseTo(4000, -2);
  await takeTool(page, 'Draw the walls');
  for (const [x, y] of [
    [0, 0],
    [3000, 2000],
    [3000, 0],
    [0, 2000],
  ] as const)
    await press(page, { x, y });
  await page.keyboard.press('Enter');
  expect(await page.getByRole('alert').innerText()).toContain('cross');
  expect(await cornersOf(page)).toEqual(drawn);
});

it('doors, windows, columns and drains are put in, and have their properties on the card', async () => {
  const page = await emptyRoom();
  await takeTool(page, 'Door');
  await press(page, { x: 1500, y: 3720 });
  await field(page, 'Opens').selectOption({ label: 'into the room' });
  await typeInto(page, 'Clear width', '42"', 1);
  await field(page, 'Hinges at').selectOption({ label: 'the end' });
  await screenshot(page, 'door');
  await takeTool(page, 'Window');
  await press(page, { x: 2500, y: -30 });
  await typeInto(page, 'Sill', '900 mm');
  await takeTool(page, 'Column');
  await press(page, { x: 3800, y: 2500 });
  await typeInto(page, 'Width', '400 mm', 1);
  await takeTool(page, 'Floor drain');
  await press(page, { x: 2400, y: 1800 });
  const { room } = await keptPlan(page);
  const door = room.openings.find(({ kind, id }) => kind === 'door' && id !== 'door-1');
  expect(door).toMatchObject({ wall: 'wall-3', swing: 'in', hinge: 'end' });
  expect(door?.width).toBeCloseTo(42 * 25.4, 6);
  expect(room.openings.find(({ kind }) => kind === 'window')).toMatchObject({ wall: 'wall-1', sill: 900 });
  expect(room.columns[0]?.width).toBe(400);
  expect(room.floorDrains).toHaveLength(1);
  // Its middle was where the wall was pressed, 36 in wide as it came.
  expect(4876.8 - ((door?.from ?? 0) + 914 / 2)).toBeCloseTo(1500, -2);
});

it('a wall is moved with its length shown, and its corner follows', async () => {
  const page = await emptyRoom();
  await takeTool(page, 'Move walls');
  const before = await seePaper(page);
  await drag(page, { x: 4876.8, y: 1500 }, { x: 5476.8, y: 1500 });
  expect(await seePaper(page)).not.toBe(before);
  const moved = await cornersOf(page);
  expect(moved[1]?.[0]).toBe(moved[2]?.[0]);
  expect(moved[1]?.[0]).toBeCloseTo(5500, -2);
  expect(moved[0]).toEqual([0, 0]);
  await page.getByRole('button', { name: 'Done' }).click();
  // The same by typing: the wall's length on its card.
  await press(page, { x: 2000, y: 0 });
  await typeInto(page, 'Length of the wall', '18 ft');
  expect((await cornersOf(page))[1]).toEqual([5486.4, 0]);
});
