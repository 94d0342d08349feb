import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, noteTexts, textsOf, typeInto } from './paper.ts';

/** Every text that is read on the page outside the canvas, with what fields show. */
const readPage = (page: Page) =>
  page.evaluate(() => [
    ...[...document.querySelectorAll('.strip, .card, .ledger')].map((part) => (part as HTMLElement).innerText),
    ...[...document.querySelectorAll('input')].map((input) => input.value),
  ]);

const US = /[′″]|°F|\b(?:ft|psi|gal|gpm|cfm|Btu)\b/;

it('one press shows millimetres everywhere: strip, card, ledger, plan and unrolled line; the plan is the same', async () => {
  const page = await openPage({ before: noteTexts, plan: examplePlan('cafe-straight') });
  await page.locator('.station[data-station="machine"]').click();
  const before = await keptPlan(page);
  const written = await textsOf(page, () => page.getByRole('button', { name: 'ft-in', exact: true }).click());
  expect(written.filter((text) => /[′″]/.test(text))).toEqual([]);
  expect(written).toContain('6706');
  const shown = (await readPage(page)).join('\n');
  expect(shown.match(US)).toBeNull();
  expect(shown).toContain('mm');
  await screenshot(page, 'metric');
  expect(await keptPlan(page)).toEqual({ ...before, settings: { ...before.settings, units: 'metric' } });
  // A plain number is now a millimetre, and feet are still understood.
  await typeInto(page, 'Across', '3000');
  expect((await keptPlan(page)).machines[0]?.x).toBe(3000);
  await typeInto(page, 'Across', '10 ft');
  expect((await keptPlan(page)).machines[0]?.x).toBeCloseTo(3048, 6);
});

it('night paper is dark with light ink, on the paper and around it', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  const day = await brightness(page);
  await page.getByRole('button', { name: 'Night paper' }).click();
  const night = await brightness(page);
  expect(day.paper).toBeGreaterThan(230);
  expect(night.paper).toBeLessThan(40);
  // The ink turns with the paper: its contrast stays.
  expect(day.paper - day.ink).toBeGreaterThan(150);
  expect(night.ink - night.paper).toBeGreaterThan(150);
  await screenshot(page, 'night');
  await page.getByRole('button', { name: 'Day paper' }).click();
  expect(await brightness(page)).toEqual(day);
});

/** The commonest grey of the paper, and the grey farthest from it. */
async function brightness(page: Page): Promise<{ paper: number; ink: number }> {
  const picture = await page.locator('.surface').screenshot();
  return page.evaluate(async (data) => {
    const bitmap = await createImageBitmap(await (await fetch(`data:image/png;base64,${data}`)).blob());
    const context = new OffscreenCanvas(bitmap.width, bitmap.height).getContext('2d');
    context?.drawImage(bitmap, 0, 0);
    const dots = context?.getImageData(0, 0, bitmap.width, bitmap.height).data ?? [];
    const counts = Array.from({ length: 256 }, () => 0);
    for (let i = 0; i < dots.length; i += 4) {
      const grey = Math.round(((dots[i] ?? 0) + (dots[i + 1] ?? 0) + (dots[i + 2] ?? 0)) / 3);
      counts[grey] = (counts[grey] ?? 0) + 1;
    }
    const paper = counts.indexOf(Math.max(...counts));
    const used = counts.flatMap((count, grey) => (count > 20 ? [grey] : []));
    const ink = used.reduce((far, grey) => (Math.abs(grey - paper) > Math.abs(far - paper) ? grey : far), paper);
    return { paper, ink };
  }, picture.toString('base64'));
}
