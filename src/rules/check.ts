import type { Point, Polygon, Segment } from '../geometry';
import type { Plan } from '../plan';
import type { Scene } from '../scene';
import type { Formatter } from '../units';
import type { Message } from './message';
import type { RecordUnit } from './recordUnit';

/** What a check says. */
export const VERDICTS = ['stop', 'watch', 'ask', 'clear'] as const;
export type Verdict = (typeof VERDICTS)[number];

/** Where a limit comes from. */
export type Source =
  | {
      kind: 'published';
      document: string;
      section: string;
      /** `read`: the text itself; `secondary`: a restatement; `memory`: unchecked, never more than a watch. */
      confidence: 'read' | 'secondary' | 'memory';
    }
  | { kind: 'data-sheet'; text: string }
  | { kind: 'common-practice'; text: string }
  | { kind: 'geometry'; text: string };

/** How the measured value must stand to the limit. */
export type Relation = 'at-most' | 'at-least' | 'more-than' | 'equals';

/** What kind of number it is; the wording formats it. Lengths in mm, slopes as `ratio`; all else in SI, temperatures in °C. */
export type MeasureUnit = 'mm' | 'ratio' | 'deg' | 'count' | 'word' | 'yes-no' | 'share' | RecordUnit;

/** What a check is about: a heading of the manual. Air and water have words of their own for the same SI unit. */
export const CHECK_GROUPS = ['line', 'room', 'capacity', 'air', 'water', 'heat', 'drain', 'power', 'people', 'sanitary'] as const;
export type CheckGroup = (typeof CHECK_GROUPS)[number];

/** The place on the plan that a finding lights up, and the place in the unrolled line where it is a height. */
export type Place = { kind: 'point'; point: Point } | { kind: 'segment'; segment: Segment } | { kind: 'area'; polygons: Polygon[] };

export interface ElevationPlace {
  table: string;
  from: number;
  to: number;
}

/** A change that would cure the finding. It is an edit of the plan, so it can be undone. */
export interface Repair {
  id: string;
  /** What it will do, with figures: "Raise the far end 1 ¼″". */
  label: Message | ((f: Formatter) => string);
  edit: (draft: Plan) => void;
}

/** The input that is missing: what it is called, and its path in the plan. */
export interface Ask {
  input: Message | string;
  path: (string | number)[];
}

/** What could cure a fault: the ids of the repairs that there are, and the search for those that do. To try one costs more than to find the fault. */
export interface Offer {
  ids: readonly string[];
  find: () => Repair[];
}

export type MeasuredValue = number | string | boolean;

/** One measurement of a check on one subject. It is made also when all is well. */
export interface Measurement {
  /** What of the subjects was measured, where one check measures several things: `gap`, `offset`, … Part of the finding's id. */
  part?: string;
  /** Ids of the things concerned; the first is the one to select. */
  subjects: string[];
  place: Place;
  elevation?: ElevationPlace;
  /** null: an input is missing, and `ask` names it. */
  value: MeasuredValue | null;
  limit: MeasuredValue | null;
  /** A stricter limit whose breach is only a watch (the value holds `limit` but not this). */
  watchLimit?: number;
  /** Verdict when the limit is broken; `stop` when it is left out. */
  severity?: 'stop' | 'watch';
  ask?: Ask;
  /** A source of this measurement's own, where the limit stands on the machine's data sheet. */
  source?: Source;
  /** Relation of its own, where the check measures several things. */
  relation?: Relation;
  unit?: MeasureUnit;
  /** One sentence: what is wrong, by how much, what to do; or, when it holds, that it holds and by what margin. */
  message?: Message;
  say?: (f: Formatter) => string;
  repairs?: Offer | (() => Repair[]);
}

/** One check: the facts first, then how to measure. One file each in `rules/`. */
export interface Check {
  /** Permanent, kebab-case: the same word in the file, its test, the manual and the message. */
  id: string;
  /** Place among all of them, lowest first; steps of ten leave room between. */
  order: number;
  title: string;
  /** `line` when it is left out. */
  group?: CheckGroup;
  unit: MeasureUnit;
  relation: Relation;
  source: Source;
  /** Why it matters, for the manual: one or two sentences. */
  why: string;
  /** An empty list: the check does not apply to this plan (which is not a pass). */
  measure: (scene: Scene) => Measurement[];
}

export interface Finding {
  /** Permanent for the same check (and part of it) on the same subjects. */
  id: string;
  check: string;
  /** What was measured, where the check measures several things; null otherwise. */
  part: string | null;
  title: string;
  group: CheckGroup;
  verdict: Verdict;
  measured: MeasuredValue | null;
  limit: MeasuredValue | null;
  /** A stricter limit whose breach is only a watch; null where there is none. */
  watchLimit: number | null;
  /** How far the value is on the good side of the limit; negative when it is broken; null where that has no meaning. */
  margin: number | null;
  unit: MeasureUnit;
  relation: Relation;
  subjects: string[];
  place: Place;
  elevation: ElevationPlace | null;
  source: Source;
  ask: Ask | null;
  message: Message | null;
  say: ((f: Formatter) => string) | null;
  /** Ids of the repairs that may cure it; `findRepairs` tries them. */
  repairs: readonly string[];
}
