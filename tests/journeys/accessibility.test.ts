import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { createPlan } from '../../src/plan/index.ts';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage } from './openPage.ts';

/** What axe finds wrong: rule, weight and the first element. */
async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).analyze();
  return found.map(({ id, impact, nodes }) => `${id} (${impact}): ${nodes[0]?.html}`);
}

const focused = (page: Page) =>
  page.evaluate(() => document.activeElement?.getAttribute('aria-label') ?? document.activeElement?.className);

it('axe finds nothing on the work page with a card, a finding and a menu open', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  await page.locator('.station[data-station="machine"]').click();
  await page.locator('.finding').nth(1).getByRole('button').first().click();
  await page.getByRole('button', { name: 'Put something on the paper' }).click();
  expect(await violations(page)).toEqual([]);
});

it('axe finds nothing at night, with the list and what holds', async () => {
  const page = await openPage();
  await page.getByRole('tab', { name: 'Everything on the plan' }).click();
  await page.getByRole('button', { name: 'Night paper' }).click();
  await page.getByRole('button', { name: /checks hold/ }).click();
  expect(await violations(page)).toEqual([]);
});

it('axe finds nothing on the start page', async () => {
  const page = await openPage();
  await page.getByRole('button', { name: 'Plans' }).click();
  await page.locator('.room .tallies').last().waitFor();
  expect(await violations(page)).toEqual([]);
});

it('axe finds nothing in the image pane, over an empty room', async () => {
  const page = await openPage({ plan: createPlan() });
  await page.getByRole('button', { name: 'Take away' }).click();
  await page.getByRole('menuitem', { name: /^Plan image/ }).click();
  await page.getByRole('dialog').waitFor();
  expect(await violations(page)).toEqual([]);
});

it('menus are walked with arrows and give the focus back', async () => {
  const page = await openPage();
  await page.getByRole('button', { name: 'Put something on the paper' }).focus();
  await page.keyboard.press('Enter');
  const item = () => page.evaluate(() => document.activeElement?.textContent);
  await expect.poll(item).toBe('Draw the walls');
  await page.keyboard.press('ArrowDown');
  expect(await item()).toBe('Move walls');
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('ArrowUp');
  expect(await item()).toBe('Measure');
  await page.keyboard.press('Escape');
  expect(await focused(page)).toBe('Put something on the paper');
  expect(await page.getByRole('menuitem').count()).toBe(0);
});

it('the start page takes the focus and gives it back; Escape leaves it', async () => {
  const page = await openPage();
  await page.getByRole('button', { name: 'Plans' }).focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => focused(page)).toBe('Plans');
  await page.keyboard.press('Escape');
  await page.getByRole('main', { name: 'Plans' }).waitFor({ state: 'detached' });
  expect(await page.evaluate(() => document.activeElement?.textContent)).toContain('Plans');
  await page.keyboard.press('Enter');
  await page.getByRole('button', { name: /^Plan of Café/ }).press('Enter');
  await expect.poll(() => focused(page)).toContain('Plan of the dish room');
});

it('a line is chosen, turned, typed into and repaired without a pointer', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  // From the head of the page, Tab reaches everything in turn: strip, paper, list, findings.
  await page.getByRole('button', { name: 'Plans' }).focus();
  const reached = new Set<string>();
  for (let step = 0; step < 120; step++) {
    await page.keyboard.press('Tab');
    const part = await page.evaluate(
      () => document.activeElement?.closest('.head, .strip, .surface, .zoom, .edge, .drawer, .card, .tabs, .ledger')?.className,
    );
    if (part) reached.add(part);
  }
  expect([...reached].sort()).toEqual(['card', 'drawer', 'edge', 'head', 'ledger', 'strip', 'surface', 'tabs', 'zoom']);
  const repair = page.locator('.finding[data-check="joint-flush"]');
  await repair.getByRole('button').first().press('Enter');
  await repair.locator('.more .press').press('Enter');
  expect(await repair.count()).toBe(0);
});
