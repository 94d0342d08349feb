import { readFile, writeFile } from 'node:fs/promises';
import { EXAMPLES } from '../../plan';
import { CLEAR, type Command, UNREADABLE, UsageError } from '../command';
import { parseOptions } from '../parseOptions';
import { systemReason } from '../readPlan';
import { shippedFile } from '../shippedFiles';

/** `new --example NAME [--out FILE]`: prints an example plan, or writes it to a file that is not there yet. */
export const create: Command = async (args, { out, error }) => {
  const { files, text } = parseOptions(args, { example: 'text', out: 'text' });
  const names = EXAMPLES.map(({ name }) => name);
  if (files.length > 0) throw new UsageError(`new takes no file: '${files[0]}'`);
  if (text.example === undefined || !names.includes(text.example))
    throw new UsageError(`new needs --example with one of ${names.join(', ')}`);
  const plan = await readFile(shippedFile('examples', `${text.example}.rackway.json`), 'utf8');
  if (text.out === undefined) {
    out(plan);
    return CLEAR;
  }
  const problem = await writeNew(text.out, plan);
  if (problem !== null) error(`rackway: ${problem}\n`);
  return problem === null ? CLEAR : UNREADABLE;
};

/** Never over a file that is there: it may be somebody's work. */
async function writeNew(file: string, text: string): Promise<string | null> {
  try {
    await writeFile(file, text, { flag: 'wx' });
    return null;
  } catch (error) {
    const isThere = typeof error === 'object' && error !== null && 'code' in error && error.code === 'EEXIST';
    return `${file}: ${isThere ? 'the file is there already; it is left as it is' : systemReason(error)}`;
  }
}
