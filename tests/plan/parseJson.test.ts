import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { describeProblem, parseJson } from '../../src/plan';

const REFUSED: { name: string; text: string; words: string }[] = [
  { name: 'empty', text: '', words: 'line 1, column 1: the file ends too early' },
  { name: 'cut off', text: '{"a": [1, 2', words: 'line 1, column 12: expected "," or "]"' },
  { name: 'third line', text: '{\n  "a": 1,\n  "b" 2\n}', words: 'line 3, column 7: expected ":"' },
  { name: 'line ends of another system', text: '[1,\r\n2,\r\nx]', words: 'line 3, column 1: expected a value' },
  { name: 'trailing comma', text: '[1,]', words: 'line 1, column 4: expected a value' },
  { name: 'trailing comma in an object', text: '{"a":1,}', words: 'line 1, column 8: expected a key in double quotes' },
  { name: 'single quotes', text: "{'a':1}", words: 'line 1, column 2: expected a key in double quotes' },
  { name: 'comment', text: '[1 // one\n]', words: 'line 1, column 4: expected "," or "]"' },
  { name: 'more after the end', text: '{} {}', words: 'line 1, column 4: expected the end of the file' },
  { name: 'leading zero', text: '[01]', words: 'line 1, column 3: expected "," or "]"' },
  { name: 'open text', text: '["abc', words: 'line 1, column 6: the text in quotes has no end' },
  { name: 'line break in text', text: '["a\nb"]', words: 'line 1, column 4: a control character inside text in quotes' },
  { name: 'bad escape', text: '["\\x41"]', words: 'line 1, column 3: an unknown escape inside text in quotes' },
  { name: 'NaN', text: '{"room": {"x": NaN}}', words: 'room.x: NaN is not a finite number' },
  { name: 'Infinity', text: '[1, -Infinity]', words: '[1]: -Infinity is not a finite number' },
  { name: 'beyond the finite', text: '{"a": {"b": 1e999}}', words: 'a.b: 1e999 is not a finite number' },
  {
    name: '__proto__',
    text: '{"room": {"outline": [{"__proto__": {"x": 1}}]}}',
    words: 'room.outline[0].__proto__: this word cannot be a key',
  },
  { name: '__proto__ in disguise', text: '{"\\u005f_proto__": 1}', words: '__proto__: this word cannot be a key' },
  { name: 'constructor', text: '{"a": {"constructor": {"prototype": 1}}}', words: 'a.constructor: this word cannot be a key' },
  { name: 'prototype', text: '{"prototype": 1}', words: 'prototype: this word cannot be a key' },
  { name: 'a key twice', text: '{"a": 1,\n "a": 2}', words: 'a: the key stands twice in its object (line 2, column 2)' },
  { name: 'an odd key in a path', text: '{"a b": {"c": NaN}}', words: '["a b"].c: NaN is not a finite number' },
  { name: 'too deep', text: '['.repeat(70) + ']'.repeat(70), words: '[0][0][0][0]: nested more than 64 levels deep' },
  { name: 'very deep', text: '['.repeat(200_000), words: '[0][0][0][0]: nested more than 64 levels deep' },
];

describe('parseJson', () => {
  it.each(REFUSED)('refuses: $name', ({ text, words }) => {
    const result = parseJson(text);
    expect(result.ok ? 'read' : describeProblem(result.problem)).toBe(words);
  });

  it('agrees with the language on whatever that writes', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 8 }), (text) => {
        fc.pre(!/__proto__|constructor|prototype/.test(text));
        expect(parseJson(text)).toEqual({ ok: true, value: JSON.parse(text) });
      }),
      { seed: 20_001, numRuns: 500 },
    );
  });

  it('reads only what the language reads', () => {
    const pieces = fc.constantFrom(
      '{',
      '}',
      '[',
      ']',
      ',',
      ':',
      '"a"',
      '"',
      '\\',
      '1',
      '-',
      '.5',
      'e3',
      'true',
      'null',
      ' ',
      '\n',
      'nul',
      '\\u00e9',
    );
    fc.assert(
      fc.property(fc.array(pieces, { maxLength: 12 }), (parts) => {
        const text = parts.join('');
        expect(!parseJson(text).ok || isJson(text)).toBe(true);
      }),
      { seed: 20_002, numRuns: 3000 },
    );
  });

  it('leaves no trace on prototypes', () => {
    parseJson('{"__proto__": {"polluted": true}}');
    expect(({} as Record<string, unknown>).polluted).toBeUndefined();
  });
});

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
