import { z } from 'zod/mini';
import type { Plan } from '../plan';
import { type Derivation, FIGURE_GROUPS, type Figure } from '../rules';
import { askWords, notesWords, refusalSentence } from '../text';
import { formatterFor } from '../units';
import { planTitle } from './jsonFormat';

/**
 * What `figures --json` prints: one object, stable within a version. Fields and units may be added; none is renamed,
 * taken away or given another meaning. Values are SI, temperatures in °C, whatever `--units` says.
 */
export const FIGURES_FORMAT = 'rackway-figures';
export const FIGURES_VERSION = 1;

/** An SI unit such as `m3/s`; `ratio`, `count` and `money` for pure numbers, `word` for a choice. */
const unit = z.string().check(z.minLength(1));

const how = z.strictObject({
  /** As it is written by hand. */
  formula: z.string(),
  /** Id of the formula in the manual; left out where it has no entry there. */
  record: z.optional(z.string()),
  inputs: z.array(z.strictObject({ name: z.string(), value: z.union([z.number(), z.string()]), unit })),
  source: z.array(z.strictObject({ text: z.string(), confidence: z.enum(['read', 'secondary', 'memory', 'practice', 'geometry']) })),
});

const figure = z.strictObject({
  /** Permanent for the same figure, part and subjects. */
  id: z.string(),
  figure: z.string(),
  /** What of the subject, where one figure has several values; null otherwise. */
  part: z.nullable(z.string()),
  title: z.string(),
  group: z.enum(FIGURE_GROUPS),
  unit,
  /** Ids of the things concerned, the first the one that it belongs to. Empty: the plan as a whole. */
  subjects: z.array(z.string()),
  /** null: see `ask` or `refusal`. */
  value: z.nullable(z.number()),
  /** The input that is missing, and its path in the plan; null when none is. */
  ask: z.nullable(z.strictObject({ input: z.string(), path: z.array(z.union([z.string(), z.number()])) })),
  /** Why the formula does not hold for these inputs; null when it does. */
  refusal: z.nullable(z.string()),
  note: z.nullable(z.string()),
  /** What the note is made of: the keys of its words, and their parameters. */
  messages: z.array(z.strictObject({ key: z.string(), params: z.record(z.string(), z.unknown()) })),
  how: z.nullable(how),
});

const figuresOfFile = z.strictObject({
  file: z.string(),
  /** Project and alternative of the plan. */
  title: z.string(),
  /** In the order in which they are shown. */
  figures: z.array(figure),
});

/** Every file that could be read, in the order of the command line. Those that could not are named on stderr. */
export const figuresReportSchema = z.strictObject({
  format: z.literal(FIGURES_FORMAT),
  version: z.literal(FIGURES_VERSION),
  files: z.array(figuresOfFile),
});

export type FiguresReport = z.infer<typeof figuresReportSchema>;

/** One file's part of the report. */
export const createFiguresReport = (file: string, plan: Plan, figures: readonly Figure[]): FiguresReport['files'][number] => ({
  file,
  title: planTitle(plan),
  figures: figures.map(createFigure),
});

/** Sentences name SI whatever `--units` says. */
const SI = formatterFor('metric');

/** Field by field, so that a field added to a figure changes the format only when it is named here. */
function createFigure(from: Figure): FiguresReport['files'][number]['figures'][number] {
  const { id, figure, part, title, group, unit, subjects, value, ask, refusal } = from;
  return {
    id,
    figure,
    part,
    title,
    group,
    unit,
    subjects: [...subjects],
    value,
    ask: ask === null ? null : { input: askWords(ask, SI), path: [...ask.path] },
    refusal: refusal === null ? null : refusalSentence(refusal),
    note: notesWords(from, SI),
    messages: from.notes.map(({ key, params }) => ({ key, params })),
    how: from.how === null ? null : createHow(from.how),
  };
}

const createHow = ({ formula, record, inputs, source }: Derivation): z.infer<typeof how> => ({
  formula,
  ...(record === undefined ? {} : { record }),
  inputs: inputs.map(({ name, value, unit }) => ({ name, value, unit })),
  source: source.map(({ text, confidence }) => ({ text, confidence })),
});
