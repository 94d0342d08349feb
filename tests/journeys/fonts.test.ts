import { expect, it } from 'vitest';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, noteTexts, textsOf, typeInto } from './paper.ts';

it('without its typeface the page is there and can be worked with', async () => {
  const page = await openPage({ refused: /\.(woff2?|ttf)$/, expected: /Failed to load resource/, before: noteTexts });
  expect(await page.evaluate(() => [...document.fonts].some(({ status }) => status === 'loaded'))).toBe(false);
  expect(await page.locator('.station').count()).toBeGreaterThan(5);
  await typeInto(page, 'Meals a day', '222');
  expect((await keptPlan(page)).demand.mealsPerDay).toBe(222);
  // Figures are written on the paper, in whatever letters the browser has.
  const written = await textsOf(page, () => page.setViewportSize({ width: 1300, height: 850 }));
  expect(written.filter((text) => /\d/.test(text)).length).toBeGreaterThan(10);
  await page.getByRole('button', { name: /checks? hold/ }).click();
  expect(await page.locator('.ledger .finding').count()).toBeGreaterThan(5);
  await screenshot(page, 'without-typeface');
});
