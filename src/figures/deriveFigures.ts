import { withoutRowIds } from '../engineering';
import { memoizeByIdentity, type Scene } from '../scene';
import { readHow } from './compute';
import { readerOf } from './readFigure';
import type { Figure, FigureReading, FigureRule, How } from './types';

/** Derives every figure that has a meaning for the scene, in the order of the rules. */
export function deriveFigures(scene: Scene, rules: readonly FigureRule[]): Figure[] {
  const figures: Figure[] = [];
  for (const memory of memoriesOf(rules)) for (const figure of figuresOf(memory, memory.read(scene))) figures.push(figure);
  return figures;
}

/** Readings that are remembered stay the same figures. */
function figuresOf(memory: Memory, readings: readonly FigureReading[]): readonly Figure[] {
  if (memory.readings !== readings) {
    const figures: Figure[] = [];
    for (const reading of readings) figures.push(new DerivedFigure(memory.rule, reading));
    memory.readings = readings;
    memory.figures = figures;
  }
  return memory.figures;
}

/** What is remembered of a rule: how it is read, and what it said last. */
interface Memory {
  rule: FigureRule;
  read: (scene: Scene) => readonly FigureReading[];
  readings: readonly FigureReading[];
  figures: readonly Figure[];
}

const memoryOf = memoizeByIdentity((rule: FigureRule): Memory => ({ rule, read: readerOf(rule), readings: [], figures: [] }));

/** The same in another list. */
const memoriesOf = memoizeByIdentity((rules: readonly FigureRule[]): readonly Memory[] => rules.map((rule) => memoryOf(rule)));

/** A class, since two hundred of them are made for a plan: this is the quickest object with late parts. */
class DerivedFigure implements Figure {
  readonly figure: string;
  readonly part: string | null;
  readonly title: string;
  readonly group: Figure['group'];
  readonly unit: Figure['unit'];
  readonly subjects: string[];
  readonly value: number | null;
  readonly ask: Figure['ask'];
  readonly refusal: string | null;
  readonly #explain: FigureReading['how'];
  #how: How | null = null;
  #words: NonNullable<FigureReading['note']> | null;
  #id: string | null = null;

  constructor({ id, title, group, unit }: FigureRule, { part, subjects, value, ask, refusal, how, note }: FigureReading) {
    this.figure = id;
    this.part = part ?? null;
    this.title = title;
    this.group = group;
    this.unit = unit;
    this.subjects = subjects;
    this.value = value;
    this.ask = ask ?? null;
    this.refusal = refusal ?? null;
    this.#words = note ?? null;
    this.#explain = how;
  }

  get id(): string {
    this.#id ??= `${this.part === null ? this.figure : `${this.figure}/${this.part}`}${this.subjects.length === 0 ? '' : `:${this.subjects.join(':')}`}`;
    return this.#id;
  }

  get note(): string | null {
    if (typeof this.#words === 'function') this.#words = this.#words();
    return this.#words;
  }

  get how(): How | null {
    if (this.#explain !== null) this.#how ??= asRead(readHow(this.#explain));
    return this.#how;
  }
}

const asRead = (how: How): How => ({ ...how, source: how.source.map((source) => ({ ...source, text: withoutRowIds(source.text) })) });
