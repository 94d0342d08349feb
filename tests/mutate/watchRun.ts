import type { Ask, FileReport, Message } from './messages';

export interface Run {
  reports: FileReport[];
  /** Something failed outside of any test. */
  hasStrayErrors: boolean;
  /** The process had to be killed or ended by itself. */
  isHung: boolean;
}

/** Asks a process to run test files and waits. It is killed when a file takes longer than its own limit of seconds. */
export function watchRun(child: Child, ask: Ask, limits: readonly number[]): Promise<Run> {
  const reports: FileReport[] = [];
  let timer: NodeJS.Timeout;
  return new Promise<Run>((resolve, reject) => {
    const hang = () => {
      child.kill('SIGKILL');
      resolve({ reports, hasStrayErrors: false, isHung: true });
    };
    const watch = () => {
      clearTimeout(timer);
      timer = setTimeout(hang, (limits[reports.length] ?? limits.at(-1) ?? 0) * 1000);
    };
    child.on('exit', hang);
    child.on('message', (message: Message) => {
      if (message.kind === 'file') reports.push(message.report);
      if (message.kind === 'done') resolve({ reports, hasStrayErrors: message.hasStrayErrors, isHung: false });
      if (message.kind === 'failure') reject(new Error(message.text));
      watch();
    });
    watch();
    child.send(ask);
  }).finally(() => {
    clearTimeout(timer);
    child.removeAllListeners();
  });
}

/** What is used of a process. */
interface Child {
  on: (event: 'exit' | 'message', listener: (message: Message) => void) => unknown;
  send: (ask: Ask) => unknown;
  kill: (signal: 'SIGKILL') => unknown;
  removeAllListeners: () => unknown;
}
