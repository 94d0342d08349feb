// Starts the command line. Node can't run TypeScript by itself, so the sources are bundled once into one file
// and bundled again only when a source is newer; a warm start only reads that file.
import { readdirSync, statSync } from 'node:fs';
import { mkdir, rename, rm, utimes } from 'node:fs/promises';
import module from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const top = join(dirname(fileURLToPath(import.meta.url)), '../..');
const cache = join(top, 'node_modules/.cache/rackway');
const bundle = join(cache, 'cli.mjs');
/** Folders of src that are no part of the command line. */
const OTHERS = new Set(['app', 'editor']);

// Where Node keeps compiled code (from 22.1 on), the bundle is compiled once.
module.enableCompileCache?.(join(cache, 'compiled'));

// A reader may take what it wants and hang up (`| head -1`): what is left is then written to nobody, and the command ends as it would have.
for (const stream of [process.stdout, process.stderr]) stream.on('error', forgiveHangUp);

const newest = newestSource();
if (timeOf(bundle) !== newest) await makeBundle();
const { main } = await import(pathToFileURL(bundle).href);
process.exitCode = await main(process.argv.slice(2));

function forgiveHangUp(error) {
  if (error.code !== 'EPIPE') throw error;
}

/** Modification time in whole ms; 0 for a file that isn't there. */
function timeOf(path) {
  return Math.round(statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0);
}

/** The newest time among what the bundle may be made of. */
function newestSource() {
  const parts = readdirSync(join(top, 'src'), { withFileTypes: true }).filter((entry) => entry.isDirectory() && !OTHERS.has(entry.name));
  return Math.max(timeOf(join(top, 'package-lock.json')), ...parts.map(({ name }) => newestIn(join(top, 'src', name))));
}

/** Folders count too, so that a deleted source is noticed. One call after the other: promises by the hundred take longer than the calls. */
function newestIn(folder) {
  const times = readdirSync(folder, { withFileTypes: true }).map((entry) => {
    const path = `${folder}/${entry.name}`;
    return entry.isDirectory() ? newestIn(path) : timeOf(path);
  });
  return Math.max(timeOf(folder), ...times);
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
