/**
 * Brings what people type or paste to one spelling before it is parsed: lower case, single ordinary
 * spaces, `-` for every dash and minus, `'` and `"` for every prime and quote, `n/d` for every written
 * fraction. "76½" becomes "76 1/2", "6′ 4 ³⁄₁₆″" becomes "6' 4 3/16"" with plain characters.
 */
export function plainText(text: string): string {
  return text
    .replace(LIKE_A_PRIME, "'")
    .replace(LIKE_A_DEGREE, '°')
    .replace(WRITTEN_FRACTION, ' $&')
    .normalize('NFKC')
    .replace(DASHES, '-')
    .replace(SLASHES, '/')
    .replace(DOUBLE_QUOTES, '"')
    .replace(SINGLE_QUOTES, "'")
    .replaceAll("''", '"')
    .replace(/\s+/gu, ' ')
    .trim()
    .toLowerCase();
}

/** The acute accent stands on some keyboards where the apostrophe should; NFKC would take it apart. */
const LIKE_A_PRIME = /\u00b4/gu;

/** The masculine ordinal and the ring are typed for the degree sign. */
const LIKE_A_DEGREE = /[\u00ba\u02da]/gu;

/** A fraction character, or raised figures before a slash: either may stand close behind a whole number. */
const WRITTEN_FRACTION = /[\u00bc-\u00be\u2150-\u215e\u2189]|[\u2070\u00b9\u00b2\u00b3\u2074-\u2079]+(?=[/\u2044\u2215])/gu;

const DASHES = /[\u2010-\u2015\u2212]/gu;
const SLASHES = /[\u2044\u2215]/gu;
const SINGLE_QUOTES = /[\u2018-\u201b\u2032\u02b9\u02bc`]/gu;
const DOUBLE_QUOTES = /[\u201c-\u201f\u2033\u02ba]|\u2032\u2032/gu;
