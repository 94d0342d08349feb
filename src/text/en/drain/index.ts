import { checks } from './checks';
import { figures } from './figures';

/** The words of the drains: air gaps, pipes, fixture units, floor sinks. */
export const drain = { ...checks, ...figures };
