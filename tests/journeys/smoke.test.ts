import { expect, it } from 'vitest';
import { openPage, screenshot } from './openPage.ts';

it('opens with its name and without a complaint', async () => {
  const page = await openPage();
  await page.getByRole('heading', { name: 'Rackway' }).waitFor();
  expect(await page.title()).toContain('Rackway');
  // The shipped font is what is drawn, not whatever the machine has.
  expect(await page.evaluate(async () => (await document.fonts.load('16px "IBM Plex Sans"')).length)).toBe(1);
  await screenshot(page, 'smoke');
});
