/** A size of paper, lying: its longer side across. */
export interface Paper {
  /** What people call it. */
  name: string;
  widthMm: number;
  heightMm: number;
}

const inches = (name: string, width: number, height: number): Paper => ({ name, widthMm: width * 25.4, heightMm: height * 25.4 });

/** The papers: the A sizes of ISO 216, and the ANSI (ASME Y14.1) and ARCH sizes of US practice. */
export const PAPERS = {
  a4: { name: 'A4', widthMm: 297, heightMm: 210 },
  a3: { name: 'A3', widthMm: 420, heightMm: 297 },
  a2: { name: 'A2', widthMm: 594, heightMm: 420 },
  a1: { name: 'A1', widthMm: 841, heightMm: 594 },
  'ansi-a': inches('Letter, 11 × 8 ½ in', 11, 8.5),
  'ansi-b': inches('ANSI B, 17 × 11 in', 17, 11),
  'ansi-c': inches('ANSI C, 22 × 17 in', 22, 17),
  'ansi-d': inches('ANSI D, 34 × 22 in', 34, 22),
  'arch-a': inches('ARCH A, 12 × 9 in', 12, 9),
  'arch-b': inches('ARCH B, 18 × 12 in', 18, 12),
  'arch-c': inches('ARCH C, 24 × 18 in', 24, 18),
  'arch-d': inches('ARCH D, 36 × 24 in', 36, 24),
} as const satisfies Record<string, Paper>;

export type PaperName = keyof typeof PAPERS;

/** A paper by its name, in capitals or not; null where there is none of that name. */
export function findPaper(name: string): PaperName | null {
  const wanted = name.trim().toLowerCase();
  return (Object.keys(PAPERS) as PaperName[]).find((key) => key === wanted) ?? null;
}
