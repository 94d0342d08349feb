import type { Message } from '../rules';
import type { Formatter } from '../units';

/** Words for a message inside of another. */
export type Tell = (message: Message) => string;

/**
 * The words of a list of messages `M` (key → parameters) in one language: a sentence for each. A key that is missing or that nothing
 * says, and a parameter that is not there, do not compile.
 */
export type Wording<M> = { readonly [K in keyof M]: (params: M[K], f: Formatter, tell: Tell) => string };

/** A whole language: every key that any rule may say. */
export type Language = { readonly [key: string]: (params: never, f: Formatter, tell: Tell) => string };

/** Puts words on messages, in one language and one system of units. Throws for a key that the language lacks. */
export function createTeller(language: Language, f: Formatter): Tell {
  const tell: Tell = ({ key, params }) => {
    const say = language[key];
    if (say === undefined) throw new Error(`there are no words for the message “${key}”`);
    return say(params as never, f, tell);
  };
  return tell;
}
