import { expect, it } from 'vitest';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, openExample, readVerdicts, typeInto } from './paper.ts';

it('shows an example room at once: its seven stations, its ledger, its unrolled line', async () => {
  const page = await openPage();
  const stations = page.getByRole('navigation', { name: /The line/ }).locator('.station');
  await stations.first().waitFor();
  expect(await stations.locator('.name').allInnerTexts()).toEqual([
    'Drop-off',
    'Scrap',
    'Pre-rinse',
    'Soiled landing',
    'Machine',
    'Clean landing',
    'Storage',
  ]);
  expect(await page.locator('.head .what').innerText()).toContain('Alder Hill School');
  expect(await readVerdicts(page)).toEqual([]);
  expect(await page.locator('.ledger .fold').innerText()).toMatch(/\d+ checks hold/);
  await page.getByRole('img', { name: 'Elevation of the unrolled line' }).waitFor();
  await screenshot(page, 'first-visit');
});

it('keeps the work a moment after each change, and has it again after a reload', async () => {
  const page = await openPage();
  await typeInto(page, 'Room', 'Pot wash');
  await typeInto(page, 'Meals a day', '333');
  // For a crash nothing is waited for but the page's own clock: no closing, no hiding.
  const keepsIt = () => page.evaluate(() => localStorage.getItem('rackway-session')?.includes('\\"mealsPerDay\\": 333') ?? false);
  await expect.poll(keepsIt, { timeout: 2000 }).toBe(true);
  const kept = await keptPlan(page);
  await page.reload();
  await page.locator('.station').first().waitFor();
  expect(await page.getByLabel('Meals a day').inputValue()).toBe('333');
  expect(await keptPlan(page)).toEqual(kept);
  expect(kept.room.name).toBe('Pot wash');
});

it('sets a damaged session aside, says so, and works', async () => {
  const page = await openPage({
    before: () => {
      if (!sessionStorage.getItem('damaged')) localStorage.setItem('rackway-session', '{"format":"rackway-session-1","plan":"{ half a pl');
      sessionStorage.setItem('damaged', 'once');
    },
  });
  await expect.poll(() => page.getByRole('alert').innerText()).toContain('was set aside');
  await screenshot(page, 'damaged-session');
  expect(await page.evaluate(() => localStorage.getItem('rackway-session-set-aside'))).toContain('half a pl');
  await page.getByRole('button', { name: 'Put away' }).click();
  await typeInto(page, 'Meals a day', '200');
  expect((await keptPlan(page)).demand.mealsPerDay).toBe(200);
  await page.reload();
  expect(await page.getByLabel('Meals a day').inputValue()).toBe('200');
});

it('says where a kept plan is wrong', async () => {
  const page = await openPage({
    before: () =>
      localStorage.setItem(
        'rackway-session',
        JSON.stringify({ format: 'rackway-session-1', plan: '{"format":"rackway-plan","version":7}' }),
      ),
  });
  await expect.poll(() => page.getByRole('alert').innerText()).toContain('version: the plan has version 7');
  expect(await page.locator('.station').count()).toBe(7);
});

it('work that was changed is not lost when another room is opened', async () => {
  const page = await openPage();
  const before = await keptPlan(page);
  await typeInto(page, 'Meals a day', '334');
  const work = await keptPlan(page);
  await openExample(page, /^Plan of Café/);
  await page.getByRole('button', { name: 'Plans' }).click();
  await page.getByRole('button', { name: 'Back to Alder Hill School as you left it' }).click();
  await page.getByText('Alder Hill School').waitFor();
  expect(await keptPlan(page)).toEqual(work);
  await page.keyboard.press('Control+z');
  expect(await keptPlan(page)).toEqual(before);
});
