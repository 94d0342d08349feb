import { expect, test } from 'vitest';
import { type Configuration, deriveConfiguration, type JoinedTable } from '../../../src/scene';

/** `left:soiled` is a soiled table at the left side; `front:clean:shut` one at a side without a door. */
const ROWS: [name: string, tables: string, expected: Configuration][] = [
  ['left and right', 'left:soiled right:clean', { kind: 'straight' }],
  ['right and left', 'right:soiled left:clean', { kind: 'straight' }],
  ['left and front', 'left:soiled front:clean', { kind: 'corner', side: 'left' }],
  ['front and right', 'front:soiled right:clean', { kind: 'corner', side: 'right' }],
  ['a third table at a shut side', 'left:soiled right:clean front:clean:shut', { kind: 'straight' }],
  ['no table', '', { kind: 'none', reason: 'no-table' }],
  ['one table', 'left:soiled', { kind: 'none', reason: 'one-table' }],
  ['one at the back', 'left:soiled back:clean:shut', { kind: 'none', reason: 'back' }],
  ['two at one side', 'left:soiled left:clean', { kind: 'none', reason: 'same-side' }],
  ['three sides', 'left:soiled right:clean front:clean', { kind: 'none', reason: 'three-sides' }],
  ['front has no door', 'left:soiled front:clean:shut', { kind: 'none', reason: 'no-door' }],
  ['two soiled', 'left:soiled right:soiled', { kind: 'none', reason: 'two-roles' }],
];

test.each(ROWS)('%s', (_name, tables, expected) => {
  const joined = tables.split(' ').filter(Boolean).map(toJoined);
  expect(deriveConfiguration(joined)).toEqual(expected);
  expect(deriveConfiguration(joined.toReversed())).toEqual(expected);
});

function toJoined(text: string): JoinedTable {
  const [side, role, shut] = text.split(':');
  return { side: side as JoinedTable['side'], role: role as JoinedTable['role'], hasDoor: shut === undefined };
}
