import { createManual, renderManual } from '../../manual';
import { formatterFor } from '../../units';
import { CLEAR, type Command, UNREADABLE, UsageError } from '../command';
import { parseOptions, parseUnits } from '../parseOptions';
import { writeNew } from '../writeNew';

/** `manual [--out FILE.md] [--units us|metric]`: prints the manual as Markdown, or writes it to a file that is not there yet. */
export const manual: Command = async (args, { out, error }) => {
  const { files, text } = parseOptions(args, { out: 'text', units: 'text' });
  if (files.length > 0) throw new UsageError(`manual takes no file: '${files[0]}'`);
  const words = renderManual(createManual(formatterFor(parseUnits(text.units) ?? 'us')));
  if (text.out === undefined) {
    out(words);
    return CLEAR;
  }
  const problem = await writeNew(text.out, words);
  if (problem !== null) error(`rackway: ${problem}\n`);
  return problem === null ? CLEAR : UNREADABLE;
};
