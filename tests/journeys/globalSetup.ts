import type { TestProject } from 'vitest/node';
import { serveBrowser } from './browser.ts';
import { serveBuilt } from './serveBuilt.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built page, with a slash at its end. */
    url: string;
    /** Address of the browser that all journeys share. */
    browser: string;
  }
}

/** Once for all journeys of a run: the page is built and served, one browser started, and the addresses given to each test file. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const [served, browser] = await Promise.all([serveBuilt(), serveBrowser()]);
  project.provide('url', served.url);
  project.provide('browser', browser.wsEndpoint());
  return async () => {
    await browser.close();
    await served.close();
  };
}
