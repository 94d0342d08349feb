import { type Browser, type BrowserContext, chromium, type Page } from 'playwright-core';
import { expect, inject, onTestFinished } from 'vitest';
import { type Plan, renderPlanText } from '../../src/plan/index.ts';
import { settle } from './paper.ts';

export interface PageOptions {
  /** Path and query after the address; nothing for the start page. */
  path?: string;
  /** Size of the window in CSS pixels; 1440 × 900 unless told. */
  width?: number;
  height?: number;
  /** Fingers instead of a mouse, as on a tablet. */
  touch?: boolean;
  /** The work that the browser kept; nothing for a first visit. */
  plan?: Plan;
  /** Troubles that the test brings about itself; others still fail it. */
  expected?: RegExp;
  /** What the page asks for in vain: files whose address is like this. */
  refused?: RegExp;
  /** Runs in the page before any of its own code: a stored plan, say. */
  before?: () => void;
}

/** How long a press waits for what it presses; far longer than anything on the page takes. */
const PATIENCE_MS = 10_000;

/** Files that share a process share the connection; it ends with the process. */
let browser: Promise<Browser> | undefined;

/**
 * Opens the built page in a fresh profile. The test fails at its end when the page logged an error, threw one,
 * or asked anything of another host. Call it inside a test.
 */
export async function openPage(options: PageOptions = {}): Promise<Page> {
  browser ??= chromium.connect(inject('browser'));
  const context = await newContext(await browser, options);
  context.setDefaultTimeout(PATIENCE_MS);
  const page = await context.newPage();
  const troubles = watchTroubles(page);
  onTestFinished(async () => {
    await context.close();
    const { expected } = options;
    expect(troubles.filter((text) => expected === undefined || !expected.test(text))).toEqual([]);
  });
  if (options.plan) await page.addInitScript(keepOnce, JSON.stringify({ format: 'rackway-session-1', plan: renderPlanText(options.plan) }));
  if (options.refused) await page.route(options.refused, (route) => route.abort());
  if (options.before) await page.addInitScript(options.before);
  await page.goto(inject('url') + (options.path ?? ''));
  await page.locator('#root > *').first().waitFor();
  await settle(page);
  return page;
}

/** Runs in the page: keeps a session for its first load, so that a reload finds what the page itself kept. */
function keepOnce(session: string): void {
  if (sessionStorage.getItem('was-kept') === null) localStorage.setItem('rackway-session', session);
  sessionStorage.setItem('was-kept', 'yes');
}

/** A picture of the page in `.screens/NAME.png`, to be looked at. */
export async function screenshot(page: Page, name: string): Promise<void> {
  await page.screenshot({ path: `.screens/${name}.png` });
}

function newContext(opened: Browser, { width = 1440, height = 900, touch = false }: PageOptions): Promise<BrowserContext> {
  return opened.newContext({
    viewport: { width, height },
    hasTouch: touch,
    locale: 'en-US',
    timezoneId: 'UTC',
    reducedMotion: 'reduce',
  });
}

function watchTroubles(page: Page): string[] {
  const troubles: string[] = [];
  const home = new URL(inject('url')).origin;
  page.on('console', (message) => {
    if (message.type() === 'error') troubles.push(`console: ${message.text()}`);
  });
  page.on('pageerror', (error) => troubles.push(`thrown: ${error.message}`));
  page.on('request', (request) => {
    const url = new URL(request.url());
    if (url.protocol.startsWith('http') && url.origin !== home) troubles.push(`asked another host: ${url.href}`);
  });
  return troubles;
}
