// Runs every tests/bench/*.bench.ts (or those whose name holds the first argument) and prints each figure beside its target.
// The files are bundled first, so that what is timed is what is shipped: plain modules, production mode.
import { readdirSync, rmSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { Bench } from 'tinybench';
import { build } from 'vite';

process.env.NODE_ENV = 'production';
const [only = ''] = process.argv.slice(2);
const names = readdirSync('tests/bench').filter((name) => name.endsWith('.bench.ts') && name.includes(only));
const outDir = resolve('node_modules/.cache/bench', String(process.pid));

try {
  if (names.length > 0) await bundle();
  else process.stdout.write('No tests/bench/*.bench.ts to run.\n');
  for (const name of names) await runFile(name.replace(/\.ts$/, ''));
} finally {
  rmSync(outDir, { recursive: true, force: true });
}

async function bundle() {
  const input = Object.fromEntries(names.map((name) => [name.replace(/\.ts$/, ''), resolve('tests/bench', name)]));
  await build({
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    build: {
      ssr: true,
      outDir,
      target: 'node20',
      rollupOptions: { input, output: { format: 'es', entryFileNames: '[name].mjs', chunkFileNames: '[name]-[hash].mjs' } },
    },
  });
}

async function runFile(name) {
  const { benchmarks } = await import(pathToFileURL(join(outDir, `${name}.mjs`)).href);
  for (const benchmark of benchmarks) print(benchmark, await takeSample(benchmark));
}

async function takeSample({ name, run, sample }) {
  if (sample) return sample();
  const bench = new Bench({ time: 1000, warmupTime: 300, retainSamples: true, throws: true });
  bench.add(name, run);
  const [task] = await bench.run();
  return task.result.latency.samples;
}

function print({ name, unit, target, statistic = 'median' }, sample) {
  if (!sample || sample.length === 0) throw new Error(`${name}: no sample was taken`);
  const sorted = [...sample].sort((a, b) => a - b);
  const at = statistic === 'p95' ? Math.ceil(sorted.length * 0.95) - 1 : Math.floor(sorted.length / 2);
  const value = sorted[at];
  const verdict = value <= target ? 'reached' : 'NOT REACHED';
  const ratio = (value / target).toFixed(2);
  process.stdout.write(
    `${name}: ${statistic} ${value.toPrecision(3)} ${unit}, target ${target} ${unit}, ratio ${ratio}, ${verdict} (n = ${sorted.length})\n`,
  );
}
