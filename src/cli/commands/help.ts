import { CLEAR, type Command } from '../command';
import { USAGE } from '../usage';

/** `help`: what there is. */
export const help: Command = async (_args, { out }) => {
  out(USAGE);
  return CLEAR;
};
