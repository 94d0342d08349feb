/** Falls are drawn this many times as steep. */
export const EXAGGERATION = 10;
