import type { CDPSession, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { PANELS } from '../../src/app/stage/panels.ts';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, onScreen, press, type ScreenPoint } from './paper.ts';

interface View {
  scale: number;
  dx: number;
  dy: number;
}

async function viewOf(page: Page): Promise<View> {
  const [scale = 0, dx = 0, dy = 0] = ((await page.locator('.surface').getAttribute('data-view')) ?? '').split(' ').map(Number);
  return { scale, dx, dy };
}

/** The point of the plan that lies under a place of the page. */
async function under(page: Page, at: ScreenPoint): Promise<ScreenPoint> {
  const { scale, dx, dy } = await viewOf(page);
  const box = await page.locator('.surface').boundingBox();
  return { x: (at.x - (box?.x ?? 0) - dx) / scale, y: (at.y - (box?.y ?? 0) - dy) / scale };
}

const closeTo = ({ x, y }: ScreenPoint, digits = 3) => ({ x: expect.closeTo(x, digits) as number, y: expect.closeTo(y, digits) as number });

it('the wheel enlarges about the pointer; the lens enlarges about the middle, and shows it all again', async () => {
  const page = await openPage();
  await page.getByRole('button', { name: 'Whole plan' }).click();
  const whole = await viewOf(page);
  const at = { x: 420, y: 330 };
  const held = await under(page, at);
  await page.mouse.move(at.x, at.y);
  await page.mouse.wheel(0, -400);
  await expect.poll(async () => (await viewOf(page)).scale).toBeGreaterThan(whole.scale * 1.5);
  expect(await under(page, at)).toEqual(closeTo(held));
  const { scale } = await viewOf(page);
  await page.getByRole('button', { name: 'Closer' }).click();
  expect((await viewOf(page)).scale).toBeCloseTo(scale * 1.25, 9);
  await page.getByRole('button', { name: 'Farther' }).click();
  expect((await viewOf(page)).scale).toBeCloseTo(scale, 9);
  await screenshot(page, 'closer');
  await page.getByRole('button', { name: 'Whole plan' }).click();
  expect(await viewOf(page)).toEqual(whole);
});

it('the middle button and the held space bar slide the paper, and nothing else', async () => {
  const page = await openPage();
  const plan = await keptPlan(page);
  const start = await viewOf(page);
  const slide = async (button: 'left' | 'middle') => {
    await page.mouse.move(735, 260);
    await page.mouse.down({ button });
    await page.mouse.move(635, 310, { steps: 5 });
    await page.mouse.up({ button });
  };
  await slide('middle');
  expect(await viewOf(page)).toEqual({ ...start, dx: start.dx - 100, dy: start.dy + 50 });
  await page.keyboard.down(' ');
  await slide('left');
  await page.keyboard.up(' ');
  expect(await viewOf(page)).toEqual({ ...start, dx: start.dx - 200, dy: start.dy + 100 });
  expect(await keptPlan(page)).toEqual(plan);
  // Let go, the pointer chooses again.
  await press(page, { x: 1150, y: 2450 });
  await page.getByRole('heading', { name: 'Tray cart' }).waitFor();
});

/** Touches the screen with as many fingers as there are places. */
const touch = (session: CDPSession, type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: ScreenPoint[]) =>
  session.send('Input.dispatchTouchEvent', { type, touchPoints: touchPoints.map(({ x, y }, id) => ({ x, y, id })) });

it('on a tablet two fingers enlarge and slide, one slides the paper or drags what is chosen', async () => {
  const page = await openPage({ width: 1024, height: 768, touch: true, plan: examplePlan('cafe-straight') });
  const session = await page.context().newCDPSession(page);
  const plan = await keptPlan(page);
  const start = await viewOf(page);
  // Two fingers, spread apart about a point and moved with it.
  const middle = { x: 360, y: 360 };
  const held = await under(page, middle);
  await touch(session, 'touchStart', [{ x: 320, y: 360 }]);
  await touch(session, 'touchStart', [
    { x: 320, y: 360 },
    { x: 400, y: 360 },
  ]);
  for (let step = 1; step <= 8; step++)
    await touch(session, 'touchMove', [
      { x: 320 - 5 * step, y: 360 + 2 * step },
      { x: 400 + 5 * step, y: 360 + 2 * step },
    ]);
  await touch(session, 'touchEnd', []);
  expect((await viewOf(page)).scale / start.scale).toBeCloseTo(2, 1);
  expect(await under(page, { x: middle.x, y: middle.y + 16 })).toEqual(closeTo(held, -1));
  expect(await keptPlan(page)).toEqual(plan);
  await screenshot(page, 'tablet-pinched');
  await page.getByRole('button', { name: 'Whole plan' }).tap();
  // One finger over a bench that is not chosen slides the paper…
  const bench = plan.things.find(({ kind }) => kind === 'work-table');
  if (!bench) throw new Error('the café has no bench');
  const swipe = async () => {
    const from = await onScreen(page, bench.x, bench.y);
    await touch(session, 'touchStart', [from]);
    for (let step = 1; step <= 8; step++) await touch(session, 'touchMove', [{ x: from.x + 8 * step, y: from.y }]);
    await touch(session, 'touchEnd', []);
  };
  const before = await viewOf(page);
  await swipe();
  expect((await viewOf(page)).dx - before.dx).toBeCloseTo(64, 0);
  expect(await keptPlan(page)).toEqual(plan);
  // …and drags it once it is.
  const at = await onScreen(page, bench.x, bench.y);
  await page.touchscreen.tap(at.x, at.y);
  await page.getByRole('heading', { name: 'Prep bench' }).waitFor();
  const still = await viewOf(page);
  await swipe();
  expect(await viewOf(page)).toEqual(still);
  const moved = (await keptPlan(page)).things.find(({ id }) => id === bench.id);
  expect(moved?.x).toBeCloseTo(bench.x + 64 / still.scale, -2);
  await screenshot(page, 'tablet-dragged');
});

it('the drawer folds, and the paper takes its place', async () => {
  const page = await openPage();
  const height = async () => (await page.locator('.surface').boundingBox())?.height ?? 0;
  const before = await height();
  await page.getByRole('button', { name: /The line, unrolled/ }).click();
  await expect.poll(height).toBeGreaterThan(before + 100);
  await screenshot(page, 'drawer-folded');
});

it.each([{ touch: false }, { touch: true }])(
  'the panels on the paper’s edge are no larger than a whole plan takes them for, touch: $touch',
  async ({ touch: isTouch }) => {
    const page = await openPage({ width: 1024, height: 768, touch: isTouch, plan: examplePlan('cafe-straight') });
    const canvas = await page.locator('.surface').boundingBox();
    const boxes = await Promise.all(['.edge', '.zoom'].map((panel) => page.locator(panel).boundingBox()));
    for (const [i, box] of boxes.entries()) {
      const panel = PANELS[isTouch ? 'touch' : 'mouse'][i];
      if (!canvas || !box || !panel) throw new Error('a panel is not on the screen');
      const left = canvas.x + (panel.left ?? canvas.width - (panel.right ?? 0) - panel.width);
      const top = canvas.y + (panel.top ?? canvas.height - (panel.bottom ?? 0) - panel.height);
      expect(box.x).toBeGreaterThanOrEqual(left);
      expect(box.y).toBeGreaterThanOrEqual(top);
      expect(box.x + box.width).toBeLessThanOrEqual(left + panel.width);
      expect(box.y + box.height).toBeLessThanOrEqual(top + panel.height);
    }
  },
);
