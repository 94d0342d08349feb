import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import type { Plan } from '../../src/plan/index.ts';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { chooseInList, keptPlan, press, readVerdicts, seePaper } from './paper.ts';

const finding = (page: Page, check: string) => page.locator(`.finding[data-check="${check}"]`);

it('a finding, chosen, is lit on the plan, a height in the unrolled line as well, and shows its source', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  const dark = await seePaper(page);
  const row = finding(page, 'hood-overhang');
  await row.getByRole('button').first().click();
  expect(await seePaper(page)).not.toBe(dark);
  expect(await row.innerText()).toMatch(/Source: International Mechanical Code, 507/);
  expect(await page.getByRole('heading', { name: 'Hood' }).count()).toBe(1);
  await screenshot(page, 'finding-lit');
  // What its gauge shows is said in words too.
  expect(await row.getByRole('button', { name: /at least 6″/ }).count()).toBe(1);
  await row.getByRole('button').first().click();
  await page.keyboard.press('Escape');
  expect(await row.getByRole('button').first().getAttribute('aria-expanded')).toBe('false');
  await page.getByRole('img', { name: 'Elevation of the unrolled line' }).waitFor();
  const still = await seePaper(page, '.unrolled');
  await finding(page, 'table-falls').getByRole('button').first().click();
  expect(await seePaper(page, '.unrolled')).not.toBe(still);
});

it('every repair of the café is one press, takes its finding away, and undo brings it back', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  const before = await keptPlan(page);
  const checks = await page.locator('.finding').evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['check'] ?? ''));
  expect(checks).toHaveLength(5);
  const repaired = [];
  for (const check of checks) {
    await finding(page, check).getByRole('button').first().click();
    const repair = finding(page, check).locator('.more .press').first();
    if ((await repair.count()) === 0) continue;
    await repair.click();
    expect(await finding(page, check).count()).toBe(0);
    await page.keyboard.press('Control+z');
    expect(await keptPlan(page)).toEqual(before);
    expect(await finding(page, check).count()).toBe(1);
    repaired.push(check);
  }
  // Where a bench may go is the person's to say: the narrow way has no repair.
  expect(repaired).toEqual(checks.filter((check) => check !== 'passable-width'));
});

it('repaired one after the other, with the bench taken away, the café has nothing wrong', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  for (const check of ['joint-flush', 'table-falls', 'hood-overhang', 'order-fits-line']) {
    await finding(page, check).getByRole('button').first().click();
    await finding(page, check).locator('.more .press').first().click();
  }
  await chooseInList(page, /bench/i);
  await page.getByRole('button', { name: 'Remove' }).click();
  await screenshot(page, 'cafe-repaired');
  expect(await readVerdicts(page)).toEqual([]);
});

it('an ask shows its field right there, and the answer clears it', async () => {
  const page = await openPage({ plan: examplePlan('hotel-heat-recovery') });
  // Two checks wait for the one answer.
  expect(await readVerdicts(page)).toEqual(['ask', 'ask']);
  expect(await page.locator('.question').count()).toBe(1);
  const row = page.locator('.question').filter({ has: finding(page, 'door-lift-clear') });
  await finding(page, 'door-lift-clear').getByRole('button').click();
  expect(await row.innerText()).toMatch(/ceiling is not known/);
  await screenshot(page, 'ask');
  await row.getByRole('textbox').fill('2.9 m');
  await row.getByRole('textbox').press('Enter');
  expect((await keptPlan(page)).room.ceilingHeight).toBe(2900);
  expect(await readVerdicts(page)).toEqual([]);
  // A ceiling that is too low is an answer too.
  await page.keyboard.press('Control+z');
  expect(await readVerdicts(page)).toEqual(['ask', 'ask']);
});

it('a door and a drain that are asked for are put on the paper from their question, and it goes', async () => {
  const plan = structuredClone(examplePlan('school-corner'));
  plan.room.openings = [];
  plan.room.floorDrains = [];
  const page = await openPage({ plan });
  const keys = ['room.openings', 'room.floorDrains'];
  const asked = (key: string) => page.locator(`.question[data-key="${key}"]`);
  for (const key of keys) expect(await asked(key).count()).toBe(1);
  for (const [key, point] of [
    ['room.openings', { x: 0, y: 2000 }],
    ['room.floorDrains', { x: 2500, y: 2500 }],
  ] as const) {
    await asked(key).getByRole('button', { name: 'Put on paper' }).click();
    await screenshot(page, `put-${key}`);
    await press(page, point);
    expect(await asked(key).count()).toBe(0);
  }
  const { room } = await keptPlan(page);
  expect([room.openings.length, room.floorDrains.length]).toEqual([1, 1]);
});

it('fingers find the answers of a question, and the figures', async () => {
  const plan = structuredClone(examplePlan('school-corner'));
  plan.finish.floorCoved = null;
  const page = await openPage({ plan, width: 1024, height: 768, touch: true });
  await chooseInList(page, /^1/);
  const pressed = [page.locator('.question').getByRole('button', { name: 'yes' }), page.locator('.figure > summary').first()];
  for (const place of pressed) {
    await place.waitFor();
    expect((await place.boundingBox())?.height).toBeGreaterThanOrEqual(36);
  }
  await screenshot(page, 'finger-answers');
  await pressed[0]?.tap();
  expect((await keptPlan(page)).finish.floorCoved).toBe(true);
  expect(await page.locator('.question').count()).toBe(0);
});

/** The school as one who has measured little would have it. */
function littleKnown(): Plan {
  const plan = structuredClone(examplePlan('school-corner'));
  plan.room.ceilingHeight = null;
  plan.supply = { hotWaterC: null, coldWaterC: null, flowPressureKpa: null, voltage: null, phase: null, toGroundV: null };
  plan.order = { ...plan.order, configuration: null, hand: null, voltage: null, phase: null, vent: null, clearOpening: null };
  for (const hood of plan.hoods) hood.lipHeight = null;
  for (const machine of plan.machines) machine.electrical = null;
  return plan;
}

it('many questions are folded, asked once each, and leave the paper alone', async () => {
  const page = await openPage({ plan: littleKnown() });
  const fold = page.getByRole('button', { name: /questions/ });
  expect(await page.locator('.question').count()).toBe(0);
  await fold.click();
  const keys = await page.locator('.question').evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['key'] ?? ''));
  expect(await fold.innerText()).toContain(`${keys.length} questions`);
  expect(keys.length).toBeGreaterThan(6);
  expect(new Set(keys).size).toBe(keys.length);
  // More checks wait than questions are asked.
  expect((await readVerdicts(page)).filter((verdict) => verdict === 'ask').length).toBeGreaterThan(keys.length);
  await screenshot(page, 'questions');
  const unlit = await seePaper(page);
  await page.locator('.question .finding').first().getByRole('button').click();
  expect(await seePaper(page)).not.toBe(unlit);
});

it('answered from the keyboard, one question leads to the next', async () => {
  const page = await openPage({ plan: littleKnown() });
  await page.getByRole('button', { name: /questions/ }).click();
  const key = () => page.evaluate(() => document.activeElement?.closest<HTMLElement>('[data-key]')?.dataset['key'] ?? '');
  const keys = await page.locator('.question').evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['key'] ?? ''));
  const at = keys.indexOf('order.hand');
  const hand = page.locator('.question[data-key="order.hand"] select');
  await hand.focus();
  // Walking the choices keeps nothing yet.
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowUp');
  expect((await keptPlan(page)).order.hand).toBe(null);
  await page.keyboard.press('Enter');
  expect((await keptPlan(page)).order.hand).toBe('left-to-right');
  expect(await key()).toBe(keys[at + 1]);
  const lip = page.locator('.question[data-key="hoods.0.lipHeight"] input');
  await lip.fill('very high');
  await lip.press('Enter');
  expect(await page.locator('.question [role="alert"]').count()).toBe(1);
  expect(await key()).toBe('hoods.0.lipHeight');
  await lip.fill('6 ft 8 in');
  await lip.press('Enter');
  expect(await page.locator('.question[data-key="hoods.0.lipHeight"]').count()).toBe(0);
  expect(await key()).not.toBe('');
});

it('what holds is folded into one line that can be opened', async () => {
  const page = await openPage();
  const fold = page.getByRole('button', { name: /checks hold/ });
  const count = Number((await fold.innerText()).match(/\d+/)?.[0]);
  await fold.click();
  expect(await page.locator('.finding[data-verdict="clear"]').count()).toBe(count);
  await screenshot(page, 'clear-unfolded');
  await fold.click();
  expect(await page.locator('.finding').count()).toBe(0);
});
