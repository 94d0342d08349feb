import { readFile } from 'node:fs/promises';
import { EXAMPLES } from '../../plan';
import { CLEAR, type Command, UNREADABLE, UsageError } from '../command';
import { parseOptions } from '../parseOptions';
import { shippedFile } from '../shippedFiles';
import { writeNew } from '../writeNew';

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
