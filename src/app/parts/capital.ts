/** The same words, beginning with a capital, for a heading or a button. */
export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
