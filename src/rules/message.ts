import type { Name } from './name';

/** What a parameter of a message may be: plain data that survives JSON. Lengths in mm, all else in SI, temperatures in °C. */
export type Param = string | number | boolean | null | Name | Message | readonly Param[] | { readonly [key: string]: Param };

/**
 * Something to be said, without words: a key of the text tables (`joint-flush/gap`) and what is to be filled in. The words are put
 * on at the edge, in the reader's language and units.
 */
export interface Message {
  readonly key: string;
  readonly params: { readonly [key: string]: Param };
}

/** The parameters of a message that has none. */
export type NoParams = Record<never, never>;

/**
 * Makes the messages of a rule: `M` lists its keys, each with its parameters. The text tables are held to the same list, so that a
 * key without words, words without a key and a wrong parameter do not compile.
 */
export const createMessages =
  <M extends { [K in keyof M]: object }>() =>
  <K extends keyof M & string>(key: K, ...[params]: keyof M[K] extends never ? [] : [params: M[K]]): Message => ({
    key,
    params: params ?? {},
  });
