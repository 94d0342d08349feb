/** Screen px for one millimetre of ink: a 3 mm letter is 12 px, a 0.25 mm line is one. */
export const PX_PER_PAPER_MM = 4;

/** Steps of the paper scale that texts and dimensions are laid out for, so that a small zoom does not lay them out anew. */
const STEP = 2 ** 0.25;

/** The paper scale (the n of 1:n) that a screen scale amounts to, rounded to a step. */
export function deriveDenominator(scalePxPerMm: number): number {
  const exact = PX_PER_PAPER_MM / scalePxPerMm;
  return STEP ** Math.round(Math.log(exact) / Math.log(STEP));
}
