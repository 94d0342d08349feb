import { parseArgs } from 'node:util';
import type { Units } from '../units';
import { UsageError } from './command';

/** The options that a command knows: `text` takes a value, `flag` stands alone. */
export type OptionKinds = Record<string, 'text' | 'flag'>;

export interface Options {
  files: string[];
  text: Record<string, string | undefined>;
  flags: Record<string, boolean>;
}

/** Splits a command's arguments into files and options; an option that it does not know is a mistake. */
export function parseOptions(args: readonly string[], kinds: OptionKinds): Options {
  const options = Object.fromEntries(
    Object.entries(kinds).map(([name, kind]) => [name, { type: kind === 'flag' ? ('boolean' as const) : ('string' as const) }]),
  );
  const { values, positionals } = parse(args, options);
  const text: Options['text'] = {};
  const flags: Options['flags'] = {};
  for (const [name, value] of Object.entries(values)) {
    if (typeof value === 'string') text[name] = value;
    if (typeof value === 'boolean') flags[name] = value;
  }
  return { files: positionals, text, flags };
}

function parse(args: readonly string[], options: Record<string, { type: 'boolean' | 'string' }>) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true });
  } catch (error) {
    throw new UsageError(
      error instanceof Error ? (error.message.split('. ')[0] ?? error.message) : 'the command line cannot be understood',
    );
  }
}

/** The measure that was asked for; undefined leaves it to each plan. */
export function parseUnits(text: string | undefined): Units | undefined {
  if (text === undefined || text === 'us' || text === 'metric') return text;
  throw new UsageError(`--units is us or metric, not '${text}'`);
}
