import { type Refusal, withoutRowIds } from '../engineering';
import { memoizeByIdentity, type Scene } from '../scene';
import { readHow } from './compute';
import { readerOf } from './readFigure';
import { readNote } from './support/readings';
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

/** A list is looked up once; a rule is remembered in whichever list it stands. */
const memoriesOf = memoizeByIdentity((rules: readonly FigureRule[]): readonly Memory[] => rules.map((rule) => memoryOf(rule)));

/** A class, since two hundred of them are made for a plan, and what most of them can tell is asked of few. */
class DerivedFigure implements Figure {
  readonly value: number | null;
  private readonly rule: FigureRule;
  private readonly reading: FigureReading;
  private name: string | null = null;
  private words: string | null = null;
  private told: How | null = null;

  constructor(rule: FigureRule, reading: FigureReading) {
    this.value = reading.value;
    this.rule = rule;
    this.reading = reading;
  }

  get id(): string {
    const { part, subjects } = this;
    this.name ??= `${part === null ? this.rule.id : `${this.rule.id}/${part}`}${subjects.length === 0 ? '' : `:${subjects.join(':')}`}`;
    return this.name;
  }

  get figure(): string {
    return this.rule.id;
  }

  get part(): string | null {
    return this.reading.part ?? null;
  }

  get title(): string {
    return this.rule.title;
  }

  get group(): Figure['group'] {
    return this.rule.group;
  }

  get unit(): Figure['unit'] {
    return this.rule.unit;
  }

  get subjects(): string[] {
    return this.reading.subjects;
  }

  get ask(): Figure['ask'] {
    return this.reading.ask ?? null;
  }

  get refusal(): Refusal | null {
    return this.reading.refusal ?? null;
  }

  get note(): string | null {
    this.words ??= readNote(this.reading);
    return this.words;
  }

  get how(): How | null {
    if (this.reading.how !== null) this.told ??= asRead(readHow(this.reading.how));
    return this.told;
  }
}

const asRead = (how: How): How => ({ ...how, source: how.source.map((source) => ({ ...source, text: withoutRowIds(source.text) })) });
