import { loadEnglish } from '../text';
import { type Command, type Streams, UNREADABLE, UsageError } from './command';
import { check } from './commands/check';
import { draw } from './commands/draw';
import { figures } from './commands/figures';
import { help } from './commands/help';
import { manual } from './commands/manual';
import { create } from './commands/new';
import { USAGE } from './usage';

const COMMANDS: Record<string, Command> = { check, figures, draw, new: create, manual, help, '--help': help, '-h': help };

/** Runs one command line and returns the process's exit code: 2 for anything that can't be understood. */
export async function main(args: readonly string[], streams: Streams = PROCESS): Promise<number> {
  await loadEnglish();
  const [name, ...rest] = args;
  const command = name === undefined || !Object.hasOwn(COMMANDS, name) ? undefined : COMMANDS[name];
  if (command === undefined) {
    streams.error(`${name === undefined ? '' : `rackway: there is no command '${name}'\n\n`}${USAGE}`);
    return UNREADABLE;
  }
  try {
    return await command(rest, streams);
  } catch (error) {
    if (!(error instanceof UsageError)) throw error;
    streams.error(`rackway: ${error.message}\n`);
    return UNREADABLE;
  }
}

const PROCESS: Streams = {
  out: (text) => void process.stdout.write(text),
  error: (text) => void process.stderr.write(text),
  columns: process.stdout.columns ?? 100,
};
