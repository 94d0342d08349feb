import { createProblem, type PlanProblem } from '../problems/planProblem';

/** Deepest nesting that a document may have. */
export const MAX_DEPTH = 64;

export type JsonResult = { ok: true; value: unknown } | { ok: false; problem: PlanProblem };

/**
 * Strict JSON (RFC 8259), with the place of what is wrong in it. It refuses also what `JSON.parse` lets through and what
 * would hurt later: keys that reach an object's prototype, a key twice in an object, numbers beyond the finite, and
 * nesting without end. Never throws.
 */
export function parseJson(text: string): JsonResult {
  const reader = new Reader(text);
  try {
    return { ok: true, value: reader.document() };
  } catch (refusal) {
    if (refusal instanceof Refusal) return { ok: false, problem: refusal.problem };
    throw refusal;
  }
}

/** Carries a problem out of the recursion; never leaves this file. */
class Refusal extends Error {
  readonly problem: PlanProblem;

  constructor(problem: PlanProblem) {
    super(problem.reason);
    this.problem = problem;
  }
}

const FORBIDDEN_KEYS = new Set(['__proto__', 'constructor', 'prototype']);
const NUMBER = /-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
const NOT_FINITE = /[+-]?(?:NaN|Infinity)\b/y;
/** Characters of a string up to its end or an escape; control characters must be escaped. */
const PLAIN = /[^"\\\u0000-\u001f]*/y;
const WHITE = /[ \t\r\n]*/y;
const ESCAPES: Record<string, string> = { '"': '"', '\\': '\\', '/': '/', b: '\b', f: '\f', n: '\n', r: '\r', t: '\t' };

/** A reader has a place in the text and a path in the document: identity and lifetime, hence a class. */
class Reader {
  private at = 0;
  private readonly path: (string | number)[] = [];

  private readonly text: string;

  constructor(text: string) {
    this.text = text;
  }

  document(): unknown {
    this.skipWhite();
    const value = this.value();
    if (this.at < this.text.length) this.refuse('expected the end of the file');
    return value;
  }

  /** A value and the white space after it. */
  private value(): unknown {
    const start = this.text[this.at];
    let value: unknown;
    if (start === '{') value = this.object();
    else if (start === '[') value = this.array();
    else if (start === '"') value = this.string();
    else if (start !== undefined && (start === '-' || (start >= '0' && start <= '9'))) value = this.number();
    else value = this.word();
    this.skipWhite();
    return value;
  }

  private object(): Record<string, unknown> {
    const result: Record<string, unknown> = {};
    this.list('}', () => {
      if (this.text[this.at] !== '"') this.refuse('expected a key in double quotes');
      const keyAt = this.at;
      const key = this.string();
      this.path.push(key);
      if (FORBIDDEN_KEYS.has(key)) throw new Refusal(createProblem('forbidden-key', [...this.path]));
      if (Object.hasOwn(result, key)) throw new Refusal(createProblem('duplicate-key', [...this.path], this.place(keyAt)));
      this.skipWhite();
      this.expect(':');
      result[key] = this.value();
      this.path.pop();
    });
    return result;
  }

  private array(): unknown[] {
    const result: unknown[] = [];
    this.list(']', () => {
      this.path.push(result.length);
      result.push(this.value());
      this.path.pop();
    });
    return result;
  }

  /** Items between brackets, with commas between them and none after the last. */
  private list(close: '}' | ']', readItem: () => void): void {
    if (this.path.length >= MAX_DEPTH) throw new Refusal(createProblem('too-deep', this.path.slice(0, 4), { limit: MAX_DEPTH }));
    this.at += 1;
    this.skipWhite();
    if (this.text[this.at] === close) {
      this.at += 1;
      return;
    }
    readItem();
    while (this.text[this.at] === ',') {
      this.at += 1;
      this.skipWhite();
      readItem();
    }
    if (this.text[this.at] !== close) this.refuse(`expected "," or "${close}"`);
    this.at += 1;
  }

  private string(): string {
    this.at += 1;
    let result = '';
    for (;;) {
      result += this.match(PLAIN) ?? '';
      const next = this.text[this.at];
      if (next === '\\') result += this.escape();
      else if (next === '"') {
        this.at += 1;
        return result;
      } else this.refuse(next === undefined ? 'the text in quotes has no end' : 'a control character inside text in quotes');
    }
  }

  private escape(): string {
    const letter = this.text[this.at + 1] ?? '';
    const plain = ESCAPES[letter];
    if (plain !== undefined) {
      this.at += 2;
      return plain;
    }
    const code = this.text.slice(this.at + 2, this.at + 6);
    if (letter !== 'u' || !/^[0-9a-fA-F]{4}$/.test(code)) this.refuse('an unknown escape inside text in quotes');
    this.at += 6;
    return String.fromCharCode(Number.parseInt(code, 16));
  }

  private number(): number {
    const text = this.match(NUMBER);
    if (text === null) return this.refuseWord();
    const value = Number(text);
    if (!Number.isFinite(value)) throw new Refusal(createProblem('not-finite', [...this.path], { text }));
    return value;
  }

  private word(): boolean | null {
    for (const [text, value] of WORDS) {
      if (!this.text.startsWith(text, this.at)) continue;
      this.at += text.length;
      return value;
    }
    return this.refuseWord();
  }

  /** Something that is no value at all: `NaN` and `Infinity` get their own reason. */
  private refuseWord(): never {
    const text = this.match(NOT_FINITE);
    if (text !== null) throw new Refusal(createProblem('not-finite', [...this.path], { text }));
    return this.refuse(this.at >= this.text.length ? 'the file ends too early' : 'expected a value');
  }

  private expect(mark: string): void {
    if (this.text[this.at] !== mark) this.refuse(`expected "${mark}"`);
    this.at += 1;
    this.skipWhite();
  }

  private skipWhite(): void {
    this.match(WHITE);
  }

  /** What a sticky pattern finds here, stepping over it; null when it finds nothing. */
  private match(pattern: RegExp): string | null {
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0];
    if (found === undefined) return null;
    this.at += found.length;
    return found;
  }

  private refuse(what: string): never {
    throw new Refusal(createProblem('syntax', [], { ...this.place(this.at), what }));
  }

  /** Line and column, from 1. */
  private place(at: number): { line: number; column: number } {
    const before = this.text.slice(0, at).split(/\r\n|\r|\n/);
    return { line: before.length, column: (before.at(-1)?.length ?? 0) + 1 };
  }
}

const WORDS: readonly (readonly [string, boolean | null])[] = [
  ['true', true],
  ['false', false],
  ['null', null],
];
