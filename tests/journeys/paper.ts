import type { Page } from 'playwright-core';
import { parsePlan, type Plan, renderPlanText } from '../../src/plan/index.ts';

/** What a person sees and does on the paper, for journeys. */

export interface ScreenPoint {
  x: number;
  y: number;
}

/** Where a point of the plan (mm) lies on the screen (px of the page). */
export async function onScreen(page: Page, x: number, y: number): Promise<ScreenPoint> {
  const surface = page.locator('.surface');
  const box = await surface.boundingBox();
  const [scale, dx, dy] = ((await surface.getAttribute('data-view')) ?? '').split(' ').map(Number) as [number, number, number];
  if (!box) throw new Error('the paper is not on the screen');
  return { x: box.x + x * scale + dx, y: box.y + y * scale + dy };
}

/** Drags from one point of the plan to another, in steps, as a hand does. */
export async function drag(page: Page, from: ScreenPoint, to: ScreenPoint, steps = 12): Promise<void> {
  const [a, b] = [await onScreen(page, from.x, from.y), await onScreen(page, to.x, to.y)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move(b.x, b.y, { steps });
  await page.mouse.up();
}

export async function press(page: Page, point: ScreenPoint): Promise<void> {
  const at = await onScreen(page, point.x, point.y);
  await page.mouse.click(at.x, at.y);
}

/** The plan as the page would save it: takes the plan file and reads it. */
export async function takePlan(page: Page): Promise<Plan> {
  await page.getByRole('button', { name: 'Take away' }).click();
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('menuitem', { name: 'Plan file' }).click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
  const result = parsePlan(Buffer.concat(chunks).toString('utf8'));
  if (!result.ok) throw new Error(result.problem.reason);
  return result.plan;
}

/** Opens a plan as a file that the person chose. */
export async function openPlan(page: Page, plan: Plan | string, name = 'room.rackway.json'): Promise<void> {
  await page.getByRole('button', { name: 'Take away' }).click();
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.getByRole('menuitem', { name: /^Open a plan file/ }).click()]);
  const text = typeof plan === 'string' ? plan : renderPlanText(plan);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Opens one of the example rooms from the start page. */
export async function openExample(page: Page, title: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Plans' }).click();
  await page.getByRole('button', { name: title }).click();
  await page.getByRole('navigation', { name: /The line/ }).waitFor();
}

/** Verdicts that the ledger shows, worst first. */
export const readVerdicts = (page: Page): Promise<string[]> =>
  page.locator('.ledger .finding').evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['verdict'] ?? ''));

/** Chooses a thing in the list beside the canvas. */
export async function chooseInList(page: Page, name: RegExp): Promise<void> {
  await page.getByRole('tab', { name: 'Everything on the plan' }).click();
  await page.getByRole('tabpanel').getByRole('button', { name }).first().click();
}
