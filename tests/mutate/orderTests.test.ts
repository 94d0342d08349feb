import { expect, test } from 'vitest';
import { orderTests } from './orderTests';
import type { Mutant, TestFile } from './types';

const MUTANT: Mutant = { file: 'src/scene/placeRun.ts', line: 1, start: 0, end: 1, replacement: '', operator: '', place: 'expression' };
const file = (path: string, seconds: number, reached = [4]): TestFile => ({ path, seconds, reached, passed: true });

test('the tests that run it: of its name, of its folder, then the quick ones', () => {
  const tests = [
    file('tests/checks/matrix.test.ts', 50),
    file('tests/checks/quick.test.ts', 1),
    file('tests/scene/placeRoom.test.ts', 3),
    file('tests/scene/placeRun.test.ts', 9),
    file('tests/scene/elsewhere.test.ts', 1, [3, 5]),
  ];
  expect(orderTests(MUTANT, 4, tests).map(({ path }) => path)).toEqual([
    'tests/scene/placeRun.test.ts',
    'tests/scene/placeRoom.test.ts',
    'tests/checks/quick.test.ts',
    'tests/checks/matrix.test.ts',
  ]);
});
