import { execFileSync } from 'node:child_process';
import { cpSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { isBuilt } from '../house/isBuilt.ts';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built page, with a slash at its end. */
    url: string;
  }
}

/**
 * Serves the built page to the journeys. The copy in dist is taken when it is newer than every source, else the page is built;
 * either way it is served from a folder of this run, which nothing else empties meanwhile.
 */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const outDir = resolve('node_modules/.cache/journeys', String(process.pid));
  if (isBuilt()) cpSync('dist', outDir, { recursive: true });
  else buildInto(outDir);
  const server = await preview({
    configFile: false,
    logLevel: 'error',
    root: resolve('src'),
    build: { outDir },
    preview: { host: '127.0.0.1', port: 0 },
  });
  const url = server.resolvedUrls?.local[0];
  if (!url) throw new Error('The built page could not be served on 127.0.0.1.');
  project.provide('url', url);
  return async () => {
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  };
}

/** In a process of its own: the test run's NODE_ENV would make a development build. */
function buildInto(outDir: string): void {
  const { NODE_ENV: _mode, VITEST: _vitest, ...env } = process.env;
  const args = ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn', '--outDir', outDir, '--emptyOutDir'];
  execFileSync(process.execPath, args, { env, stdio: ['ignore', 'ignore', 'inherit'] });
}
