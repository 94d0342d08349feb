import { expect, it } from 'vitest';
import { parsePlan } from '../../src/plan/index.ts';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, openPlan, takePlan, typeInto } from './paper.ts';

/** A fault in the browser's own arithmetic, which following the water over a table needs, put in and taken out by a word of the test. */
function faultInArithmetic(): void {
  const page = window as unknown as { isFaulty: boolean };
  page.isFaulty = sessionStorage.getItem('faulty') === 'yes';
  const sign = Math.sign.bind(Math);
  Math.sign = (value: number) => {
    if (page.isFaulty) throw new Error('a fault put in by the test');
    return sign(value);
  };
}

it('a plan that cannot be worked out can be saved and another one opened, and the page is never blank', async () => {
  const page = await openPage({ before: faultInArithmetic, expected: /a fault put in by the test/ });
  await typeInto(page, 'Meals a day', '222');
  const work = await keptPlan(page);
  await page.evaluate(() => sessionStorage.setItem('faulty', 'yes'));
  await page.reload();
  await page.getByRole('heading', { name: 'Rackway can’t draw this plan' }).waitFor();
  expect(await page.getByRole('alert').innerText()).toContain('a fault put in by the test');
  await screenshot(page, 'trouble');
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('button', { name: 'Save the plan file' }).click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
  const saved = parsePlan(Buffer.concat(chunks).toString('utf8'));
  expect(saved).toMatchObject({ ok: true, plan: work });
  // The fault is gone with another plan.
  await page.evaluate(() => {
    (window as unknown as { isFaulty: boolean }).isFaulty = false;
  });
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByRole('button', { name: /Open a plan file/ }).click()]);
  await chooser.setFiles({
    name: 'other.json',
    mimeType: 'application/json',
    buffer: Buffer.from(JSON.stringify({ ...work, title: { ...work.title, project: 'Other' } })),
  });
  await page.locator('.station').first().waitFor();
  expect((await takePlan(page)).title.project).toBe('Other');
});

it('a fault in the midst of work leaves the last change to be taken back', async () => {
  const page = await openPage({ before: faultInArithmetic, expected: /a fault put in by the test/ });
  const before = await keptPlan(page);
  await page.evaluate(() => {
    (window as unknown as { isFaulty: boolean }).isFaulty = true;
  });
  await typeInto(page, 'Ceiling', '8 ft');
  await page.getByRole('heading', { name: 'Rackway can’t draw this plan' }).waitFor();
  await page.evaluate(() => {
    (window as unknown as { isFaulty: boolean }).isFaulty = false;
  });
  await page.getByRole('button', { name: 'Take back the last change' }).click();
  await page.locator('.station').first().waitFor();
  expect(await keptPlan(page)).toEqual(before);
  await openPlan(page, before);
});
