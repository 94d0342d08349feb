import { expect, it } from 'vitest';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, typeInto } from './paper.ts';

const REGISTRY = /registry-[^/]*\.js$/;

/** Checks of the school that stand on figures: `peak-kept` is among them. */
const held = '.finding[data-check="peak-kept"]';

it('the checks that stand on figures come by themselves, and nothing is called clear before', async () => {
  const page = await openPage({ plan: examplePlan('school-corner'), before: holdBack });
  await page.getByText('The checks are coming.').waitFor();
  expect(await page.locator('.tally.mark-clear, .strip .mark-clear').count()).toBe(0);
  const fold = page.getByRole('button', { name: /checks hold/ });
  expect(await fold.count()).toBe(0);
  await screenshot(page, 'services-coming');
  await page.evaluate(() => (window as unknown as { letGo: () => void }).letGo());
  await page.locator('.ledger[aria-busy="false"]').waitFor();
  expect(Number((await fold.innerText()).match(/\d+/)?.[0])).toBeGreaterThan(25);
  expect(await fold.innerText()).not.toContain('so far');
  expect(await page.locator('.strip .mark-clear').count()).toBeGreaterThan(0);
  await fold.click();
  expect(await page.locator(held).count()).toBe(1);
});

it('where they cannot be fetched it is said, nothing is called clear, and they can be tried again', async () => {
  const page = await openPage({ plan: examplePlan('school-corner'), refused: REGISTRY, expected: /Failed to load resource/ });
  await typeInto(page, 'Meals a day', '222');
  const note = page.getByRole('alert').filter({ hasText: /can be fetched, so nothing is said of air/ });
  await note.waitFor();
  expect(await page.locator('.tally.mark-clear, .strip .mark-clear').count()).toBe(0);
  expect(await page.getByRole('button', { name: /checks hold/ }).innerText()).toContain('so far');
  await screenshot(page, 'services-refused');
  // While the server does not answer, nothing that is open is given up for another try.
  await page.route(page.url(), (route) => route.abort());
  await note.getByRole('button', { name: 'Try again' }).click();
  await note.waitFor();
  await page.unroute(page.url());
  await page.unroute(REGISTRY);
  await note.getByRole('button', { name: 'Try again' }).click();
  await page.locator('.tally.mark-clear').waitFor();
  expect(await note.count()).toBe(0);
  expect((await keptPlan(page)).demand.mealsPerDay).toBe(222);
  await page.getByRole('button', { name: /checks hold/ }).click();
  expect(await page.locator(held).count()).toBe(1);
});

/** Runs in the page: the first frame after the page was drawn, which asks for the checks, is held back until it is let go. */
function holdBack(): void {
  const page = window as unknown as { letGo: () => void };
  const begin = window.setTimeout.bind(window);
  const waiting: (() => void)[] = [];
  page.letGo = () => {
    window.setTimeout = begin;
    for (const act of waiting) act();
  };
  const hold = (act: TimerHandler, ms?: number, ...rest: unknown[]) => {
    if (ms === undefined && typeof act === 'function') waiting.push(act as () => void);
    else return begin(act, ms, ...rest);
    return 0;
  };
  window.setTimeout = hold as typeof window.setTimeout;
}
