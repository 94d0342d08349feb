import { describe, expect, it } from 'vitest';
import type { Plan } from '../../src/plan';
import { deriveFigures, type Figure, type FigureRule } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { askWords, notesWords, refusalSentence } from '../../src/text';
import { FIGURES } from '../../src/topics/registry';
import { formatterFor } from '../../src/units';
import { movedPlan, PLAN_MOTIONS, wordIn } from './planMotions';

/** One case of a figure: a plan, and every reading that must come of it, in order. */
export interface FigureCase {
  name: string;
  plan: Plan;
  expect: readonly ExpectedReading[];
}

/** What a reading must be. What is left out must be absent: no part, no question, no refusal. */
export interface ExpectedReading {
  part?: string;
  subjects: readonly string[];
  value: number | null;
  /** Tolerance of the value; rounding alone when it is left out. */
  within?: number;
  /** Path in the plan of the input that is asked for, joined by dots. */
  asks?: string;
  /** What the refusal must say, in part. */
  refuses?: string;
  /** What the note must say, in part, or null where there is none; checked where it is given. */
  notes?: string | RegExp | null;
}

const ROUNDING = 1e-9;

/** Runs a table of cases: each as drawn, turned, moved and in a mirror, with the same readings. */
export function describeFigure(rule: FigureRule, cases: readonly FigureCase[]): void {
  describe(rule.id, () => {
    it('is in the registry', () => expect(FIGURES).toContain(rule));
    it.each(cases)('$name', (row) => {
      for (const motion of PLAN_MOTIONS) {
        const figures = figuresOf(rule, movedPlan(row.plan, motion));
        const found = figures.map((figure, i) => summary(figure, row.expect[i], (part) => wordIn(motion, part)));
        expect({ motion: motion.name, found }).toEqual({ motion: motion.name, found: row.expect.map(expectedSummary) });
      }
      for (const [i, figure] of figuresOf(rule, row.plan).entries()) expectWords(figure, row.expect[i]);
    });
  });
}

export const figuresOf = (rule: FigureRule, plan: Plan): Figure[] => deriveFigures(deriveScene(plan), [rule]);

const summary = (
  { part, subjects, value, ask, refusal }: Figure,
  expected: ExpectedReading | undefined,
  word: (part: string) => string,
) => {
  const said = refusal === null ? null : refusalSentence(refusal);
  return {
    part: part === null ? null : word(part),
    subjects,
    value: snap(value, expected),
    asks: ask?.path.join('.') ?? null,
    refuses: expected?.refuses !== undefined && said?.includes(expected.refuses) === true ? expected.refuses : said,
  };
};

const expectedSummary = ({ part, subjects, value, asks, refuses }: ExpectedReading) => ({
  part: part ?? null,
  subjects,
  value,
  asks: asks ?? null,
  refuses: refuses ?? null,
});

/** A value near enough to the expected one becomes it. */
function snap(value: number | null, expected: ExpectedReading | undefined): number | null {
  if (value === null || expected?.value == null) return value;
  const within = expected.within ?? ROUNDING * (1 + Math.abs(expected.value));
  return Math.abs(value - expected.value) <= within ? expected.value : value;
}

function expectWords(figure: Figure, expected: ExpectedReading | undefined): void {
  expect({ notes: saysNote(figure, expected?.notes), tells: tellsHow(figure) }).toEqual({ notes: true, tells: true });
}

function saysNote(figure: Figure, wanted: ExpectedReading['notes']): boolean {
  const note = notesWords(figure, formatterFor('us'));
  if (wanted === undefined || wanted === null || note === null) return wanted === undefined || note === wanted;
  return typeof wanted === 'string' ? note.includes(wanted) : wanted.test(note);
}

/** What is computed names its source; what is asked for has a name, and was not computed. */
function tellsHow({ how, ask }: Figure): boolean {
  return ask === null ? how === null || how.source.length > 0 : askWords(ask, formatterFor('us')) !== '' && how === null;
}
