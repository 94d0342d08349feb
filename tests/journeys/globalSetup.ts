import type { TestProject } from 'vitest/node';
import { serveBuilt } from './serveBuilt.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built page, with a slash at its end. */
    url: string;
  }
}

/** Once for all journeys of a run: the page is built and served, and its address given to each test file. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const { url, close } = await serveBuilt();
  project.provide('url', url);
  return close;
}
