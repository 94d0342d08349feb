/** Longer than any quantity that a person types; what is longer is refused unread. */
export const MAX_TYPED = 80;

/**
 * A typed quantity in plain characters: one kind of space, of minus, of fraction slash and of prime, lower case.
 * `6′ 4½″` becomes `6' 4 1/2"`, `m²` becomes `m2`.
 */
export function tidyText(text: string): string {
  return text
    .slice(0, MAX_TYPED * 2)
    .replace(THIN_THOUSANDS, '')
    .replace(VULGAR_FRACTION, ' $&')
    .replace(RAISED_NUMERATOR, ' $&')
    .normalize('NFKC')
    .replace(/[⁄∕]/g, '/')
    .replace(/[‐-―−]/g, '-')
    .replace(/[’‘ʹ`´′]/g, "'")
    .replace(/[“”„ʺ″]|''/g, '"')
    .toLowerCase()
    .replace(/\s+/g, ' ')
    .trim();
}

/** A thin space between digits can only part thousands; a common one may also stand between two numbers. */
const THIN_THOUSANDS = /(?<=\d)[\u2009\u202f](?=\d{3}(?!\d))/g;

/** ½ and its like: a space before it keeps 6½ from turning into 61/2. */
const VULGAR_FRACTION = /[¼-¾⅐-⅞↉]/g;

/** The raised digits before a fraction slash, as in ³⁄₁₆. */
const RAISED_NUMERATOR = /[⁰¹²³⁴-⁹]+(?=[⁄/])/g;
