import { EventEmitter } from 'node:events';
import { beforeEach, expect, test, vi } from 'vitest';
import type { Message } from './messages';
import { watchRun } from './watchRun';

/** A process that says what the test has it say. */
class Child extends EventEmitter {
  send = vi.fn<(message: unknown) => boolean>(() => true);
  kill = vi.fn<(message: unknown) => boolean>(() => true);
  say = (message: Message): boolean => this.emit('message', message);
}

const report = (path: string) => ({ path, passed: true, seconds: 1, reached: null, isSlow: false });

beforeEach(() => {
  vi.useFakeTimers();
  return () => vi.useRealTimers();
});

test('files are reported until all have ended', async () => {
  const child = new Child();
  const run = watchRun(child, { changed: 'src/a.ts', tests: ['one', 'two'] }, [5, 5]);
  child.say({ kind: 'file', report: report('one') });
  child.say({ kind: 'file', report: report('two') });
  child.say({ kind: 'done', hasStrayErrors: true });
  expect(await run).toEqual({ reports: [report('one'), report('two')], hasStrayErrors: true, isHung: false });
  expect(child.send).toHaveBeenCalledWith({ changed: 'src/a.ts', tests: ['one', 'two'] });
  expect(child.kill).not.toHaveBeenCalled();
});

test('a file that takes longer than its own limit is ended', async () => {
  const child = new Child();
  const run = watchRun(child, { changed: null, tests: ['one', 'two'] }, [5, 20]);
  vi.advanceTimersByTime(4900);
  child.say({ kind: 'file', report: report('one') });
  vi.advanceTimersByTime(19_900);
  expect(child.kill).not.toHaveBeenCalled();
  vi.advanceTimersByTime(200);
  expect(child.kill).toHaveBeenCalledWith('SIGKILL');
  expect(await run).toEqual({ reports: [report('one')], hasStrayErrors: false, isHung: true });
});

test('a process that ends by itself has not run its tests', async () => {
  const child = new Child();
  const run = watchRun(child, { changed: null, tests: ['one'] }, [5]);
  child.emit('exit', 134);
  expect((await run).isHung).toBe(true);
});

test('what it could not do is an error', async () => {
  const child = new Child();
  const run = watchRun(child, { changed: null, tests: ['one'] }, [5]);
  child.say({ kind: 'failure', text: 'no such test' });
  await expect(run).rejects.toThrow('no such test');
});
