import { expect, test } from 'vitest';
import { nameBody, nameFitting, nameLine, nameMachine, nameOwner } from '../../src/rules/support/nameItems';
import type { Scene, SolidKind } from '../../src/scene';

const thing = (id: string, name: string, own = '') => ({ name, thing: { id, name: own } });
const table = (id: string, role: 'soiled' | 'clean') => ({ table: { id, role } });

/** What names are read from, and no more: one machine, two soiled tables and a clean one, two bins and a rack of a name of its own. */
const SCENE = {
  marks: { washer: '1', one: '2', two: '3', tidy: '4', bin: '5' },
  machines: [{ machine: { id: 'washer' } }],
  tables: [table('one', 'soiled'), table('two', 'soiled'), table('tidy', 'clean')],
  things: [thing('bin', 'Bin'), thing('unmarked', 'Bin'), thing('rack', 'Tall rack', 'Tall rack')],
  hoods: [{ hood: { id: 'hood' } }],
  runs: [{ run: { id: 'duct' } }],
} as unknown as Scene;

test.each([
  { id: 'washer', name: { kind: 'machine', mark: null } },
  { id: 'one', name: { kind: 'table', role: 'soiled', mark: '2' } },
  { id: 'two', name: { kind: 'table', role: 'soiled', mark: '3' } },
  { id: 'tidy', name: { kind: 'table', role: 'clean', mark: null } },
  { id: 'bin', name: { kind: 'thing', name: 'Bin', isOwn: false, mark: '5' } },
  // The id where it bears no mark.
  { id: 'unmarked', name: { kind: 'thing', name: 'Bin', isOwn: false, mark: 'unmarked' } },
  { id: 'rack', name: { kind: 'thing', name: 'Tall rack', isOwn: true, mark: null } },
  { id: 'hood', name: { kind: 'hood', mark: null } },
  { id: 'duct', name: { kind: 'run', mark: null } },
  { id: 'post', name: { kind: 'column' } },
])('what bears the id $id', ({ id, name }) => expect(nameOwner(SCENE, id)).toEqual(name));

test('one of two machines bears its mark, and its line as well', () => {
  const two = { ...SCENE, machines: [{ machine: { id: 'washer' } }, { machine: { id: 'other' } }] } as unknown as Scene;
  const machine = { machine: { id: 'washer' } } as Parameters<typeof nameMachine>[1];
  expect([nameMachine(two, machine), nameLine(two, machine)]).toEqual([
    { kind: 'machine', mark: '1' },
    { kind: 'line', mark: '1' },
  ]);
});

const WHOLE = { kind: 'machine', mark: null };
const part = (name: string) => ({ kind: 'part', part: name, of: WHOLE });

test.each<{ kind: SolidKind; name: object }>([
  { kind: 'machine', name: WHOLE },
  { kind: 'table', name: WHOLE },
  { kind: 'column', name: { kind: 'column' } },
  { kind: 'backsplash', name: part('backsplash') },
  { kind: 'overshelf', name: part('overshelf') },
  { kind: 'door-lift', name: part('door-lift') },
  { kind: 'recovery-box', name: part('recovery-box') },
])('a body of the kind $kind', ({ kind, name }) => expect(nameBody(SCENE, { owner: 'washer', kind })).toEqual(name));

test.each([
  { kind: 'sink', spray: true, fitting: 'pre-rinse' },
  { kind: 'sink', spray: false, fitting: 'sink' },
  { kind: 'scrap-bin', spray: true, fitting: 'scrap-bin' },
])('a fitting: $kind', ({ kind, spray, fitting }) => {
  expect(nameFitting({ kind, spray } as never)).toEqual({ kind: 'fitting', fitting });
});
