// Mutation testing: puts small faults into the sources, one at a time, and tells which of them no test notices.
//   npm run mutate -- [PATH…] [--sample 300] [--seed 11] [--tests PATH]… [--list] [--least PERCENT] [--patience SECONDS]
// A worker process is this file again, with --worker.
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const [first, ...rest] = process.argv.slice(2);
const isWorker = first === '--worker';
const { module } = await load(isWorker ? 'testWorker.ts' : 'main.ts');
if (isWorker) await module.serve(...rest);
else process.exitCode = await module.main(process.argv.slice(2));

function load(name) {
  return runnerImport(fileURLToPath(new URL(name, import.meta.url)), { configFile: false, logLevel: 'error' });
}
