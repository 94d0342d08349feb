import type { Scene } from '../scene';
import type { Ask } from './check';
import type { Message } from './message';
import type { FormulaSource } from './record';
import type { RecordUnit } from './recordUnit';
import type { Refusal } from './refusal';

/** Where a figure belongs: the part of the work that it is about. */
export const FIGURE_GROUPS = ['capacity', 'water', 'heat', 'air', 'power', 'drain', 'people'] as const;
export type FigureGroup = (typeof FIGURE_GROUPS)[number];

/** How a figure was computed: the formula, what went into it, and where it comes from. */
export interface Derivation {
  /** As it is written by hand. */
  formula: string;
  /** Id of the formula's record; left out where there is none. */
  record?: string;
  inputs: { name: string; value: number | string; unit: RecordUnit | 'word' }[];
  source: FormulaSource[];
}

/** One reading of a figure on one subject. SI. */
export interface FigureReading {
  /** What of the subject, where one figure has several values: `high`, `low`, the name of a rule. Part of the figure's id. */
  part?: string;
  /** Ids of the things that it is about; the first is the one whose card shows it. Empty: the plan as a whole. */
  subjects: string[];
  /** null: an input is missing (`ask`), or an input lies outside of the formula's range (`refusal`). */
  value: number | null;
  ask?: Ask;
  refusal?: Refusal;
  how: Derivation | null;
  /** A few words beside the number: which rule governs, what was assumed. Long ones are told when they are asked for. */
  notes?: readonly Message[];
  note?: string | (() => string);
  /** Of several rules beside each other: the one that counts. */
  governs?: boolean;
}

/** One figure: the facts first, then how it is derived. One file each in `rules/`. */
export interface FigureRule {
  /** Kebab-case and permanent. */
  id: string;
  /** Place among all of them, lowest first; steps of ten leave room between. */
  order: number;
  title: string;
  group: FigureGroup;
  unit: RecordUnit;
  /** An empty list: the figure has no meaning for this plan. */
  derive: (scene: Scene) => FigureReading[];
}

/** A computed engineering quantity, with its unit, formula and inputs. */
export interface Figure {
  /** Permanent for the same rule (and part of it) on the same subjects. */
  id: string;
  figure: string;
  part: string | null;
  title: string;
  group: FigureGroup;
  unit: RecordUnit;
  subjects: string[];
  value: number | null;
  ask: Ask | null;
  refusal: Refusal | null;
  how: Derivation | null;
  /** One a sentence: which rule governs, what was assumed. */
  notes: readonly Message[];
  note: string | null;
}
