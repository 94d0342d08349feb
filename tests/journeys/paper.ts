import type { Locator, Page } from 'playwright-core';
import { type Plan, parsePlan, renderPlanText } from '../../src/plan/index.ts';

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
  const [file] = await Promise.all([page.waitForEvent('download'), page.getByRole('menuitem', { name: 'Plan file', exact: true }).click()]);
  const chunks: Buffer[] = [];
  for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
  const result = parsePlan(Buffer.concat(chunks).toString('utf8'));
  if (!result.ok) throw new Error(result.problem.reason);
  return result.plan;
}

/**
 * The plan as the browser keeps it. The page saves a moment after each change and at once when it is hidden; it is told
 * that it is, so that nothing need be waited for.
 */
export async function keptPlan(page: Page): Promise<Plan> {
  const kept = await page.waitForFunction(() => {
    window.dispatchEvent(new Event('pagehide'));
    return localStorage.getItem('rackway-session');
  });
  const result = parsePlan((JSON.parse((await kept.jsonValue()) ?? '') as { plan: string }).plan);
  if (!result.ok) throw new Error(result.problem.reason);
  return result.plan;
}

/** Takes a tool from the menu at the paper's edge. */
export async function takeTool(page: Page, name: string): Promise<void> {
  await page.getByRole('button', { name: 'Put something on the paper' }).click();
  await page.getByRole('menuitem', { name, exact: true }).click();
}

/** Moves the pointer to a point of the plan as a hand does, in steps. */
export async function moveTo(page: Page, point: ScreenPoint): Promise<void> {
  const at = await onScreen(page, point.x, point.y);
  await page.mouse.move(at.x, at.y, { steps: 6 });
}

/** Waits until what was changed has been drawn: two frames, which come within moments or not at all. */
const drawn = (page: Page) =>
  page.evaluate(
    () =>
      new Promise((seen, fail) => {
        requestAnimationFrame(() => requestAnimationFrame(seen));
        setTimeout(() => fail(new Error('the browser draws no frames')), 8000);
      }),
  );

/** A sum over every dot of the canvases in a part of the page, the paper unless told: it differs when what is seen differs. */
export async function seePaper(page: Page, part = '.surface'): Promise<string> {
  await drawn(page);
  return page.evaluate((place) => {
    const sums = [...document.querySelectorAll<HTMLCanvasElement>(`${place} canvas`)].map((canvas) => {
      const dots = canvas.getContext('2d')?.getImageData(0, 0, canvas.width, canvas.height).data.buffer;
      return new Uint32Array(dots ?? new ArrayBuffer(0)).reduce((sum, dot) => (Math.imul(sum, 31) + dot) | 0, 7);
    });
    return sums.join(' ');
  }, part);
}

/** Notes every text that is written on a canvas. Given to `openPage` as `before`. */
export function noteTexts(): void {
  const page = window as unknown as { texts: string[] };
  page.texts = [];
  const { prototype } = CanvasRenderingContext2D;
  const write: (...args: [string, number, number]) => void = Reflect.get(prototype, 'fillText');
  prototype.fillText = function (...args: [string, number, number]) {
    // What is not in the page nobody can read.
    if (this.canvas.isConnected) page.texts.push(args[0]);
    Reflect.apply(write, this, args);
  };
}

/** Texts written on canvases while the act went on and the frame after it. */
export async function textsOf(page: Page, act: () => Promise<unknown>): Promise<string[]> {
  await page.evaluate(() => {
    (window as unknown as { texts: string[] }).texts = [];
  });
  await act();
  await drawn(page);
  return page.evaluate(() => (window as unknown as { texts: string[] }).texts);
}

/** A field of the card. */
export const field = (page: Page, label: string | RegExp, index = 0): Locator =>
  page.getByRole('tabpanel').getByLabel(label, { exact: true }).nth(index);

/** What a field shows, with plain spaces. */
export const valueOf = async (input: Locator): Promise<string> => (await input.inputValue()).replaceAll('\u202f', ' ');

/** Types into a field of the card and leaves it with Enter. */
export async function typeInto(page: Page, label: string, text: string, index = 0): Promise<void> {
  await field(page, label, index).fill(text);
  await field(page, label, index).press('Enter');
}

/** Opens a plan as a file that the person chose. */
export async function openPlan(page: Page, plan: Plan | string, name = 'room.rackway.json'): Promise<void> {
  await page.getByRole('button', { name: 'Take away' }).click();
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('menuitem', { name: /^Open a plan file/ }).click(),
  ]);
  const text = typeof plan === 'string' ? plan : renderPlanText(plan);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

/** Waits until the paper has its size, so that a place on it stays where it is. */
export async function settle(page: Page): Promise<void> {
  const surface = page.locator('.surface');
  await surface.waitFor();
  if (!(await page.evaluate(() => 'letGo' in window))) await page.locator('.ledger[aria-busy="true"]').waitFor({ state: 'detached' });
  const look = async () => `${await surface.getAttribute('data-view')} ${JSON.stringify(await surface.boundingBox())}`;
  for (let before = '', now = await look(); before !== now; now = await look()) {
    before = now;
    await drawn(page);
  }
}

/** Opens one of the example rooms from the start page. */
export async function openExample(page: Page, title: RegExp): Promise<void> {
  await page.getByRole('button', { name: 'Plans' }).click();
  await page.getByRole('button', { name: title }).click();
  await page.getByRole('main', { name: 'Plans' }).waitFor({ state: 'detached' });
  await settle(page);
}

/** Verdicts that the ledger shows, worst first. */
export const readVerdicts = (page: Page): Promise<string[]> =>
  page.locator('.ledger .finding').evaluateAll((rows) => rows.map((row) => (row as HTMLElement).dataset['verdict'] ?? ''));

/** Chooses a thing in the list beside the canvas. */
export async function chooseInList(page: Page, name: RegExp): Promise<void> {
  await page.getByRole('tab', { name: 'Everything on the plan' }).click();
  await page.getByRole('tabpanel').getByRole('button', { name }).first().click();
}
