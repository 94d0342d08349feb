// Weighs what a browser must read before the canvas can be used: the entry of the built page and all that it imports statically.
// A lazy import is not counted. Raise the ceiling only in the change that needs it.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

const CEILING_KB = 270;

const manifest = JSON.parse(readFileSync('dist/.vite/manifest.json', 'utf8'));
const entry = Object.keys(manifest).find((key) => manifest[key].isEntry);
if (entry === undefined) throw new Error('The manifest of dist names no entry: nothing was weighed.');

const total = [...staticFiles(entry)].reduce((sum, file) => sum + gzippedBytes(file), 0);
const kb = total / 1000;
process.stdout.write(`JavaScript before the canvas: ${kb.toFixed(1)} kB gzip of ${CEILING_KB}\n`);
if (kb > CEILING_KB) process.exitCode = 1;

function staticFiles(key, seen = new Set()) {
  const { file, imports = [] } = manifest[key];
  if (seen.has(file)) return seen;
  seen.add(file);
  for (const one of imports) staticFiles(one, seen);
  return seen;
}

function gzippedBytes(file) {
  return gzipSync(readFileSync(join('dist', file)), { level: 9 }).length;
}
