import AxeBuilder from '@axe-core/playwright';
import { expect, it } from 'vitest';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { chooseInList } from './paper.ts';

it('a finding and a figure lead to their entries; from a figure on to its formula', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  const finding = page.locator('.finding[data-check="hood-overhang"]');
  await finding.getByRole('button').first().click();
  await finding.getByRole('button', { name: 'Why this is checked' }).click();
  const entry = page.getByRole('dialog', { name: 'Manual' }).locator('article');
  expect(await entry.getAttribute('data-entry')).toBe('check/hood-overhang');
  expect(await entry.innerText()).toMatch(/at least 6″/);
  await screenshot(page, 'manual-check');
  await page.keyboard.press('Escape');
  expect(await page.getByRole('dialog').count()).toBe(0);
  await chooseInList(page, /^1/);
  const figure = page.locator('.figure').first();
  await figure.locator('summary').click();
  await figure.getByRole('button', { name: 'In the manual' }).click();
  expect(await entry.getAttribute('data-entry')).toBe(`figure/${await figure.getAttribute('data-figure')}`);
  await entry.getByRole('button').first().click();
  expect(await entry.getAttribute('data-entry')).toMatch(/^formula\//);
  expect(await entry.innerText()).toMatch(/What goes in, and what comes out[\s\S]+Source[\s\S]+Worked examples/);
  expect((await new AxeBuilder({ page }).analyze()).violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html}`)).toEqual([]);
  await screenshot(page, 'manual-formula');
});

it('is opened, searched and read with fingers or from the keyboard', async () => {
  const page = await openPage({ width: 1024, height: 768, touch: true });
  await page.getByRole('button', { name: 'Manual' }).tap();
  const manual = page.getByRole('dialog', { name: 'Manual' });
  const search = manual.getByRole('searchbox', { name: 'Search the manual' });
  const all = Number((await manual.getByRole('status').first().innerText()).match(/\d+/)?.[0]);
  await search.fill('niosh lifting');
  const few = Number((await manual.getByRole('status').first().innerText()).match(/\d+/)?.[0]);
  expect(few).toBeGreaterThan(0);
  expect(few).toBeLessThan(all / 10);
  await search.press('Enter');
  expect(await manual.locator('article').getAttribute('data-entry')).toMatch(/lift/);
  await screenshot(page, 'manual-search');
  await search.fill('no such words');
  expect(await manual.getByText('Nothing in the manual has these words.').count()).toBe(1);
  await manual.getByRole('button', { name: 'Close' }).tap();
  expect(await page.getByRole('dialog').count()).toBe(0);
});
