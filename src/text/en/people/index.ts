import { checks } from './checks';
import { figures } from './figures';

/** The words of people: their ways, reach, lifts and light. */
export const people = { ...checks, ...figures };
