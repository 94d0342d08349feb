import { describe, expect, test } from 'vitest';
import { applyMutant } from './applyMutant';
import { findMutants } from './findMutants';

const mutate = (text: string, file = 'src/toy/toy.ts'): string[] => findMutants(text, file).map((mutant) => applyMutant(text, mutant));

describe('each operator', () => {
  test.each([
    ['a bound', 'f(a < b);', ['f((a <= b));']],
    ['a bound from above', 'f(a >= b);', ['f((a > b));']],
    ['an equality', 'f(a === b);', ['f((a !== b));']],
    ['an inequality with null', 'f(a != null);', ['f((a == null));']],
    ['a sum', 'f(a + b);', ['f((a - b));']],
    ['a product, its brackets kept', 'f((a + b) / c);', ['f(((a + b) * c));', 'f(((a - b)) / c);']],
    ['a chain, what stood together stays together', 'f(a && b && c);', ['f((a && b || c));', 'f((a || b) && c);']],
    ['a growing sum', 'a += b;', ['(a -= b);']],
    ['a negation', 'f(!a);', ['f(a);']],
    ['the lesser of two', 'f(Math.min(a, b));', ['f(Math.max(a, b));']],
    ['a choice', 'f(a ? b : c);', ['f(((a) ? (c) : (b)));']],
    ['a number', 'f(0, 12.5);', ['f(1, 12.5);', 'f(0, 13.5);']],
    ['a truth', 'f(true);', ['f(false);']],
    ['a word that is compared', "f(a === 'b');", ["f((a !== 'b'));", "f(a === '');"]],
    ['a condition', 'if (a) b();', ['if (!(a)) b();']],
    ['an equality as a condition, once', 'if (a === b) c();', ['if ((a !== b)) c();']],
    [
      'an early return',
      'function f() { if (a) return; b(); }',
      ['function f() {}', 'function f() { if (!(a)) return; b(); }', 'function f() { {} b(); }'],
    ],
    [
      'an early exit in a block',
      'for (;;) { if (!a) { b(); continue; } c(); }',
      ['for (;;) {}', 'for (;;) { {} c(); }', 'for (;;) { if (a) { b(); continue; } c(); }'],
    ],
    ['a block', 'try { a(); } finally { b(); }', ['try {} finally { b(); }', 'try { a(); } finally {}']],
    ['what is wrapped in a type', 'f((a < b) as T, c! > d);', ['f(((a <= b)) as T, c! > d);', 'f((a < b) as T, (c! >= d));']],
    ['behind letters outside of ASCII', "f('é', a < b);", ["f('é', (a <= b));"]],
  ])('%s', (_name, text, expected) => {
    expect(mutate(text).sort()).toEqual([...expected].sort());
  });
});

describe('left alone', () => {
  test.each([
    ['types', 'type A = 1 | true; interface B { c: 2 } let d: 3;'],
    ['imports', "import { a } from '../b';"],
    ['words', "f('word'); g(`${a + 1} of ${b}`);"],
    ['what is thrown', "throw new Error(a + 'b');"],
    ['facts of a rule', 'f({ id: 1, title: 2, why: 3, source: { section: 4 } });'],
    ['keys', 'f({ 1: a });'],
  ])('%s', (_name, text) => {
    expect(mutate(text)).toEqual([]);
  });

  test('the body of a while, which would never end', () => {
    expect(mutate('while (a) { b(); }')).toEqual(['while (!(a)) { b(); }']);
  });
});

test('a mutant tells its line', () => {
  const [mutant] = findMutants('f(a);\n\nf(a < b);\n', 'src/toy/toy.ts');
  expect(mutant).toMatchObject({ file: 'src/toy/toy.ts', line: 3, operator: '< → <=' });
});

test('elements in a page are read too', () => {
  expect(mutate('f(<a b="1">{c ? <d /> : null}</a>);', 'src/toy/toy.tsx')).toEqual(['f(<a b="1">{((c) ? (null) : (<d />))}</a>);']);
});
