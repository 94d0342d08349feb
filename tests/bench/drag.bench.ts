import type { Page } from 'playwright-core';
import { launchBrowser } from '../journeys/browser.ts';
import { chooseInList, onScreen, openPlan, type ScreenPoint } from '../journeys/paper.ts';
import { serveBuilt } from '../journeys/serveBuilt.ts';
import type { Benchmark } from './benchmark.ts';
import { createTypicalRoom } from './typicalRoom.ts';

/** Three rounds of 120 steps: about six seconds. The first frames of the program's life are among them. */
const ROUND = 120;
const STEPS = 3 * ROUND;

/** Drags the machine of the typical room round and round; gives the time of each frame. */
async function measureDrag(): Promise<number[]> {
  const [served, browser] = await Promise.all([serveBuilt(), launchBrowser()]);
  try {
    const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
    await page.goto(served.url);
    await openPlan(page, createTypicalRoom());
    return await dragMachine(page);
  } finally {
    await browser.close();
    await served.close();
  }
}

async function dragMachine(page: Page): Promise<number[]> {
  const [machine] = createTypicalRoom().machines;
  if (!machine) throw new Error('the typical room has no machine');
  // What is chosen is taken before what lies over it.
  await chooseInList(page, /^1/);
  const start = await onScreen(page, machine.x, machine.y);
  await page.mouse.move(start.x, start.y);
  await page.mouse.down();
  await page.evaluate(watchFrames);
  for (let i = 1; i <= STEPS; i++) await page.mouse.move(...pointAt(start, i));
  await page.mouse.up();
  return page.evaluate(() => (window as unknown as { frames: number[] }).frames);
}

/** A loop about the start, so that the pointer never rests, snaps come and go, and the machine meets what stands about. */
const pointAt = ({ x, y }: ScreenPoint, step: number): [number, number] => {
  const turn = (2 * Math.PI * step) / ROUND;
  return [x + 120 * Math.sin(turn), y + 60 * (1 - Math.cos(turn))];
};

/**
 * Runs in the page. The time of a frame: what the main thread does from its first pointer event to after it has painted.
 * The waiting for the next one is not in it, nor the frames in which nothing moved.
 */
function watchFrames(): void {
  const frames: number[] = [];
  const painted = new MessageChannel();
  let begun: number | null = null;
  painted.port1.onmessage = () => {
    if (begun !== null) frames.push(performance.now() - begun);
    begun = null;
  };
  const mark = () => {
    if (begun !== null) return;
    begun = performance.now();
    requestAnimationFrame(() => painted.port2.postMessage(null));
  };
  window.addEventListener('pointermove', mark, { capture: true });
  Object.assign(window, { frames });
}

export const benchmarks: Benchmark[] = [
  { name: 'dragging the machine of the typical room, a frame', unit: 'ms', target: 16.7, statistic: 'p95', sample: measureDrag },
];
