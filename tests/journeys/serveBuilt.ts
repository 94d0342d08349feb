import { execFileSync } from 'node:child_process';
import { cpSync, rmSync } from 'node:fs';
import { resolve } from 'node:path';
import { preview } from 'vite';
import { isBuilt } from '../house/isBuilt.ts';

export interface Served {
  /** Address of the page, with a slash at its end. */
  url: string;
  close: () => Promise<void>;
}

/**
 * Serves the built page on a free port of 127.0.0.1. The copy in dist is taken when it is newer than every source, else the page
 * is built; either way it is served from a folder of this process, which nothing else empties meanwhile.
 */
export async function serveBuilt(): Promise<Served> {
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
  const close = async () => {
    await server.close();
    rmSync(outDir, { recursive: true, force: true });
  };
  return { url, close };
}

/** In a process of its own: the test run's NODE_ENV would make a development build. */
function buildInto(outDir: string): void {
  const { NODE_ENV: _mode, VITEST: _vitest, ...env } = process.env;
  const args = ['node_modules/vite/bin/vite.js', 'build', '--logLevel', 'warn', '--outDir', outDir, '--emptyOutDir'];
  execFileSync(process.execPath, args, { env, stdio: ['ignore', 'ignore', 'inherit'] });
}
