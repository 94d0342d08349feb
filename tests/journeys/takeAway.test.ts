import type { Download, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, openPlan, takePlan, typeInto } from './paper.ts';

async function bytesOf(file: Download): Promise<Buffer> {
  const chunks: Buffer[] = [];
  for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
  return Buffer.concat(chunks);
}

async function openImage(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Take away' }).click();
  await page.getByRole('menuitem', { name: /^Plan image/ }).click();
  await page.getByRole('dialog', { name: 'Plan image' }).waitFor();
}

async function take(page: Page, name: string): Promise<{ name: string; bytes: Buffer }> {
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name, exact: true }).click()]);
  return { name: file.suggestedFilename(), bytes: await bytesOf(file) };
}

/** Decodes a picture in the browser: its size, and how many of its dots are not paper. */
const decode = (page: Page, bytes: Buffer, type: string) =>
  page.evaluate(
    async ([data, kind]) => {
      const picture = await createImageBitmap(await (await fetch(`data:${kind};base64,${data}`)).blob());
      const canvas = new OffscreenCanvas(picture.width, picture.height);
      const context = canvas.getContext('2d');
      context?.drawImage(picture, 0, 0);
      const dots = context?.getImageData(0, 0, picture.width, picture.height).data ?? [];
      let dark = 0;
      for (let i = 0; i < dots.length; i += 4) if ((dots[i] ?? 255) < 128) dark++;
      return { width: picture.width, height: picture.height, inked: dark / (dots.length / 4) };
    },
    [bytes.toString('base64'), type] as const,
  );

it('a plan file that is saved and opened or dropped again is the same plan', async () => {
  const page = await openPage();
  await typeInto(page, 'Meals a day', '421');
  const saved = await takePlan(page);
  expect(saved).toEqual(await keptPlan(page));
  await openPlan(page, examplePlan('hotel-heat-recovery'), 'hotel.json');
  await page.getByText('Opened hotel.json.').waitFor();
  expect(await keptPlan(page)).toEqual(examplePlan('hotel-heat-recovery'));
  const data = await page.evaluateHandle((text) => {
    const transfer = new DataTransfer();
    transfer.items.add(new File([text], 'dropped.json', { type: 'application/json' }));
    return transfer;
  }, JSON.stringify(saved));
  await page.dispatchEvent('.surface', 'drop', { dataTransfer: data });
  await page.getByText('Opened dropped.json.').waitFor();
  expect(await keptPlan(page)).toEqual(saved);
  expect(await page.locator('.head .what').innerText()).toContain('Alder Hill School');
});

it('the PNG is a picture of the sheet at its size, and not blank; the pane closes and gives the focus back', async () => {
  const page = await openPage();
  await openImage(page);
  await page.keyboard.press('Escape');
  await page.getByRole('dialog').waitFor({ state: 'detached' });
  expect(await page.evaluate(() => document.activeElement?.getAttribute('aria-label'))).toBe('Take away');
  await openImage(page);
  await screenshot(page, 'image-pane');
  const { name, bytes } = await take(page, 'Take the PNG');
  expect(name).toBe('alder-hill-school-corner-line.png');
  const { width, height, inked } = await decode(page, bytes, 'image/png');
  // ANSI B, 17 × 11 in, at eight dots a millimetre.
  expect([width, height]).toEqual([Math.round(17 * 25.4 * 8), Math.round(11 * 25.4 * 8)]);
  expect(inked).toBeGreaterThan(0.005);
  expect(inked).toBeLessThan(0.3);
  await page.getByRole('button', { name: 'Close', exact: true }).click();
  await page.getByRole('dialog').waitFor({ state: 'detached' });
});

it('the SVG is well formed, true to scale, and says whose room it is and what stands in it', async () => {
  const page = await openPage({ plan: examplePlan('cafe-straight') });
  await openImage(page);
  await page.getByRole('dialog').getByLabel('Paper').selectOption({ label: 'A3' });
  const { name, bytes } = await take(page, 'Take the SVG');
  expect(name).toBe('harbour-lane-cafe-as-quoted.svg');
  const read = await page.evaluate((text) => {
    const tree = new DOMParser().parseFromString(text, 'image/svg+xml');
    const root = tree.documentElement;
    return {
      error: tree.querySelector('parsererror')?.textContent ?? null,
      size: [root.getAttribute('width'), root.getAttribute('height'), root.getAttribute('viewBox')],
      texts: [...tree.querySelectorAll('text')].map((element) => element.textContent ?? ''),
      scripts: tree.querySelectorAll('script, foreignObject, image').length,
    };
  }, bytes.toString('utf8'));
  expect(read).toMatchObject({ error: null, size: ['420mm', '297mm', '0 0 420 297'], scripts: 0 });
  const said = read.texts.join('\n');
  for (const words of ['Harbour Lane Café', 'Back kitchen', 'DR-7', 'Cup shelving', 'Prep bench', 'Preliminary'])
    expect(said).toContain(words);
  for (const mark of ['1', '2', '3', '4', '5', '6', '7']) expect(read.texts).toContain(mark);
  // The picture that the browser makes of it is not blank.
  const { inked } = await decode(page, await page.locator('.preview svg').screenshot(), 'image/png');
  expect(inked).toBeGreaterThan(0.005);
});
