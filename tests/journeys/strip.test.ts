import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, seePaper } from './paper.ts';

const station = (page: Page, kind: string) => page.locator(`.station[data-station="${kind}"]`);

it('a station, pressed, is chosen on the plan and on the card', async () => {
  const page = await openPage();
  const chosen = [];
  for (const kind of ['drop-off', 'pre-rinse', 'soiled-landing', 'machine', 'clean-landing', 'storage']) {
    const before = await seePaper(page);
    await station(page, kind).click();
    expect(await seePaper(page)).not.toBe(before);
    expect(await station(page, kind).getAttribute('aria-pressed')).toBe('true');
    chosen.push(await page.getByRole('tabpanel').getByRole('heading', { level: 2 }).innerText());
  }
  expect(chosen).toEqual([
    'Drop-off',
    'Pre-rinse sink',
    'Rack landing',
    'Recirculating, hot-water sanitising, booster built in',
    'Rack landing',
    'Shelving',
  ]);
});

it('stations show the verdict of what they stand for', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  for (const [kind, mark] of [
    ['soiled-landing', 'stop'],
    ['machine', 'stop'],
    ['clean-landing', 'stop'],
    ['pre-rinse', 'clear'],
  ] as const)
    expect(await station(page, kind).locator('.mark').getAttribute('class')).toContain(`mark-${mark}`);
});

it('a ring adds a station; undo takes it away; the strip itself keeps still', async () => {
  const page = await openPage();
  const fittings = async () => (await keptPlan(page)).tables.flatMap(({ fittings: all }) => all.map(({ kind }) => kind));
  const before = await fittings();
  const top = async () => (await station(page, 'machine').boundingBox())?.y;
  const at = await top();
  await station(page, 'scrap').click();
  await page.keyboard.press('Delete');
  expect(await station(page, 'scrap').getAttribute('data-absent')).toBe('true');
  expect(await fittings()).toHaveLength(before.length - 1);
  await page.getByRole('button', { name: 'Add a station after drop-off' }).click();
  await screenshot(page, 'ring');
  expect(await top()).toBe(at);
  await page.getByRole('menuitem', { name: 'Scrap', exact: true }).click();
  expect(await station(page, 'scrap').getAttribute('data-absent')).toBe('false');
  expect((await fittings()).sort()).toEqual(before.sort());
  await page.keyboard.press('Control+z');
  expect(await station(page, 'scrap').getAttribute('data-absent')).toBe('true');
});

it('the configuration and the hand are changed on the machine’s card, and the line stays whole', async () => {
  const page = await openPage();
  await station(page, 'machine').click();
  await page.getByRole('button', { name: 'Straight', exact: true }).click();
  const sides = async () =>
    (await keptPlan(page)).tables.map(({ role, place }) => `${role} ${place.kind === 'joined' ? place.side : 'free'}`).sort();
  expect(await sides()).toEqual(['clean right', 'soiled left']);
  await page.getByRole('button', { name: 'Swap the hand' }).click();
  expect(await sides()).toEqual(['clean left', 'soiled right']);
  expect(await page.locator('.station[data-absent="true"] .name').allInnerTexts()).toEqual([]);
  await screenshot(page, 'swapped');
});

it('fittings and legs are added on a table’s card', async () => {
  const page = await openPage();
  await page.getByRole('tab', { name: 'Everything on the plan' }).click();
  await page
    .getByRole('tabpanel')
    .getByRole('button', { name: /Clean table/ })
    .click();
  await page.getByRole('button', { name: 'Add to the table' }).click();
  await page.getByRole('menuitem', { name: 'Overshelf' }).click();
  await page.getByRole('tab', { name: 'Everything on the plan' }).click();
  await page
    .getByRole('tabpanel')
    .getByRole('button', { name: /Clean table/ })
    .click();
  await page.getByRole('button', { name: 'Add to the table' }).click();
  await screenshot(page, 'table-menu');
  await page.getByRole('menuitem', { name: 'Around a corner, clockwise', exact: true }).click();
  const table = (await keptPlan(page)).tables.find(({ role }) => role === 'clean');
  expect(table?.legs.map(({ turnDeg }) => turnDeg)).toEqual([0, 90]);
  expect(table?.fittings.map(({ kind }) => kind)).toContain('overshelf');
});
