// Starts the command line. Node can't run TypeScript by itself, so the sources are bundled once into one file
// and bundled again only when a source is newer; a warm start only reads that file.
import { mkdir, readdir, rename, rm, stat, utimes } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const top = join(dirname(fileURLToPath(import.meta.url)), '../..');
const cache = join(top, 'node_modules/.cache/rackway');
const bundle = join(cache, 'cli.mjs');

const newest = await newestSource();
if ((await timeOf(bundle)) !== newest) await makeBundle();
const { main } = await import(pathToFileURL(bundle).href);
process.exitCode = await main(process.argv.slice(2));

/** Modification time in whole ms; 0 for a file that isn't there. */
async function timeOf(path) {
  return stat(path).then(
    (found) => Math.round(found.mtimeMs),
    () => 0,
  );
}

/** The newest time among what the bundle is made of. Folders count too, so that a deleted source is noticed. */
async function newestSource() {
  const entries = await readdir(join(top, 'src'), { recursive: true });
  const paths = entries.map((entry) => join(top, 'src', entry));
  const times = await Promise.all([...paths, join(top, 'package-lock.json')].map(timeOf));
  return Math.max(...times);
}

/**
 * Written under a name of this process and renamed, so that no other start ever reads half a file.
 * It bears the time of the newest source that it was made of: a source saved while it was being made is not missed.
 */
async function makeBundle() {
  const { build } = await import('vite');
  const outDir = join(cache, `new-${process.pid}`);
  await mkdir(cache, { recursive: true });
  await build({
    configFile: false,
    root: top,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: true, external: ['@resvg/resvg-js'], target: 'node' },
    build: {
      ssr: join(top, 'src/cli/main.ts'),
      outDir,
      emptyOutDir: true,
      target: 'node20',
      rollupOptions: { output: { format: 'es', entryFileNames: 'cli.mjs', codeSplitting: false } },
    },
  });
  await utimes(join(outDir, 'cli.mjs'), newest / 1000, newest / 1000);
  await rename(join(outDir, 'cli.mjs'), bundle);
  await rm(outDir, { recursive: true, force: true });
}
