/**
 * What makes a plan unreadable or unsound: where, which rule, and the reason in a few words.
 * The wording of each rule stands here and nowhere else.
 */
export interface PlanProblem {
  code: string;
  /** Keys and indices from the root of the document; empty for the file as a whole. */
  path: readonly (string | number)[];
  reason: string;
}

/** The rules and their words. Each takes the facts of the case. */
const REASONS = {
  'too-big': (f: { bytes: number; limit: number }) => `the file has ${f.bytes} bytes, more than the ${f.limit} that a plan may have`,
  'not-utf8': () => 'the file is not text in UTF-8',
  syntax: (f: { line: number; column: number; what: string }) => `line ${f.line}, column ${f.column}: ${f.what}`,
  'duplicate-key': (f: { line: number; column: number }) => `the key stands twice in its object (line ${f.line}, column ${f.column})`,
  'forbidden-key': () => 'this word cannot be a key',
  'too-deep': (f: { limit: number }) => `nested more than ${f.limit} levels deep`,
  'not-finite': (f: { text: string }) => `${f.text} is not a finite number`,
  'not-a-plan': (f: { found: string }) => `not a Rackway plan: expected "format": "rackway-plan", found ${f.found}`,
  'version-missing': (f: { found: string }) => `expected a version number of 1 or more, found ${f.found}`,
  'version-newer': (f: { found: number; known: number }) =>
    `the plan has version ${f.found}, newer than version ${f.known}, the newest that this program reads`,
  'version-unknown': (f: { found: number; oldest: number }) =>
    `the plan has version ${f.found}; versions before ${f.oldest} were never released`,
  migration: (f: { from: number }) => `the plan of version ${f.from} could not be brought up to date`,
  missing: (f: { expected: string }) => `expected ${f.expected}, found nothing`,
  'wrong-type': (f: { expected: string; found: string }) => `expected ${f.expected}, found ${f.found}`,
  'wrong-value': (f: { choices: string; found: string }) => `expected ${f.choices}, found ${f.found}`,
  'out-of-range': (f: { bound: string; found: string }) => `expected ${f.bound}, found ${f.found}`,
  'wrong-form': (f: { rule: string; found: string }) => `${f.rule}; found ${f.found}`,
  'unknown-key': () => 'this key is not part of a plan',
  'duplicate-id': (f: { id: string; first: string }) => `the id "${f.id}" is already taken by ${f.first}`,
  'no-such-sheet': (f: { id: string }) => `there is no data sheet "${f.id}", in this plan or among the families`,
  'no-such-controls': (f: { id: string; sheet: string; known: string }) =>
    `the data sheet "${f.sheet}" has no controls position "${f.id}" (it has ${f.known})`,
  'no-such-variant': (f: { id: string; sheet: string; known: string }) =>
    `the data sheet "${f.sheet}" has no electrical variant "${f.id}" (it has ${f.known})`,
  'no-such-machine': (f: { id: string }) => `there is no machine "${f.id}" in this plan`,
  'no-such-wall': (f: { id: string }) => `there is no wall "${f.id}": a wall bears the id of the corner where it begins`,
  'opening-off-wall': (f: { end: number; length: number }) =>
    `the opening ends at ${f.end} mm, beyond the end of its wall at ${f.length} mm`,
  'openings-overlap': (f: { other: string }) => `the opening overlaps the opening "${f.other}" on the same wall`,
  'walls-cross': (f: { a: string; b: string }) => `the walls "${f.a}" and "${f.b}" cross or touch`,
  'wall-too-short': (f: { id: string }) => `the wall "${f.id}" has no length: two corners lie on the same place`,
  'no-area': () => 'the room has no floor: its corners lie on one line',
  'first-turn': (f: { turnDeg: number }) => `the first stretch of a table has no turn before it: expected 0, found ${f.turnDeg}`,
  'deck-heights': (f: { expected: number; found: number }) =>
    `a deck height is given at the joint, at each turn and at the end: expected ${f.expected}, found ${f.found}`,
  'fitting-off-table': (f: { from: number; to: number; length: number }) =>
    `the fitting reaches from ${f.from} to ${f.to} mm on a table of ${f.length} mm`,
  'rack-line-off-table': (f: { at: number; depth: number }) =>
    `the rack centre line lies ${f.at} mm from the edge of a table ${f.depth} mm deep`,
  'controls-off-side': (f: { to: number; length: number }) => `the controls end at ${f.to} mm on a side of ${f.length} mm`,
  'upside-down': (f: { from: number; to: number }) => `expected an end beyond its start of ${f.from} mm, found ${f.to} mm`,
  'least-above-most': (f: { least: number; most: number }) => `expected no more than the most of ${f.most} Pa, found ${f.least} Pa`,
} as const satisfies Record<string, (facts: never) => string>;

export type ProblemCode = keyof typeof REASONS;
type Facts<C extends ProblemCode> = Parameters<(typeof REASONS)[C]>[0];

/** A problem of a kind, at a place, with the facts that its words need. */
export function createProblem<C extends ProblemCode>(
  code: C,
  path: PlanProblem['path'],
  ...facts: Facts<C> extends undefined ? [] : [Facts<C>]
): PlanProblem {
  const word = REASONS[code] as (facts?: Facts<C>) => string;
  return { code, path, reason: word(facts[0]) };
}

/** One sentence for people: `room.outline[3].x: expected a number, found text "abc"`. */
export function describeProblem(problem: PlanProblem): string {
  const place = pathText(problem.path);
  return place === '' ? problem.reason : `${place}: ${problem.reason}`;
}

/** A path as people write it. */
export function pathText(path: PlanProblem['path']): string {
  return path.reduce<string>((text, step) => {
    if (typeof step === 'number') return `${text}[${step}]`;
    if (!/^[A-Za-z_$][\w$]*$/.test(step)) return `${text}[${JSON.stringify(step)}]`;
    return text === '' ? step : `${text}.${step}`;
  }, '');
}

/** A value as a short description: `text "abc"`, `a list of 3`, `nothing`. */
export function describeValue(value: unknown): string {
  if (value === undefined) return 'nothing';
  if (value === null) return 'null';
  if (typeof value === 'string') return `text ${JSON.stringify(value.length > 40 ? `${value.slice(0, 40)}…` : value)}`;
  if (Array.isArray(value)) return `a list of ${value.length}`;
  return typeof value === 'number' || typeof value === 'boolean' ? `${value}` : 'an object';
}
