/** What a command writes to. Tests give their own. */
export interface Streams {
  out: (text: string) => void;
  error: (text: string) => void;
  /** Letters a line. */
  columns: number;
}

/** Exit codes: all clear; something to look at; the command line, or a file, could not be read. */
export const CLEAR = 0;
export const FOUND = 1;
export const UNREADABLE = 2;

/** A command takes its arguments and answers with the exit code of the process. */
export type Command = (args: readonly string[], streams: Streams) => Promise<number>;

/** A mistake of whoever typed the command line: one sentence, no stack. */
export class UsageError extends Error {}
