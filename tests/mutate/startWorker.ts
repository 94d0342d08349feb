import { type ChildProcess, fork } from 'node:child_process';
import { fileURLToPath } from 'node:url';
import type { Ask, Message, WorkerKind } from './messages';
import type { PrivateCopy } from './privateCopy';
import { type Run, watchRun } from './watchRun';

/** A process that runs tests in a copy of its own. */
export interface Worker {
  copy: PrivateCopy;
  /** Test files there are. */
  tests: readonly string[];
  /** Runs test files one after the other; each has its own seconds, after which it counts as hanging. */
  run: (ask: Ask, limits: readonly number[]) => Promise<Run>;
  stop: () => void;
}

export async function startWorker(copy: PrivateCopy, kind: WorkerKind): Promise<Worker> {
  let process = await startProcess(copy, kind);
  return {
    copy,
    tests: process.tests,
    run: async (ask, limits) => {
      if (process.child.exitCode !== null || process.child.killed) process = await startProcess(copy, kind);
      return watchRun(process.child, ask, limits);
    },
    stop: () => process.child.kill('SIGKILL'),
  };
}

async function startProcess(copy: PrivateCopy, kind: WorkerKind): Promise<{ child: ChildProcess; tests: string[] }> {
  const script = fileURLToPath(new URL('run.mjs', import.meta.url));
  // CI: a snapshot that is missing is a failure and is not written.
  const env = { ...process.env, NODE_ENV: 'test', CI: '1' };
  const child = fork(script, ['--worker', copy.root, kind], { cwd: copy.root, env, stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
  return new Promise((resolve, reject) => {
    child.once('exit', (code) => reject(new Error(`the test process ended with ${code} before it was ready`)));
    child.once('message', (message: Message) => {
      child.removeAllListeners();
      if (message.kind === 'ready') resolve({ child, tests: message.tests });
      else reject(new Error('the test process did not become ready'));
    });
  });
}
