import { describe, expect, it } from 'vitest';
import { dataSheetSchema, findFamily } from '../../src/catalog';
import {
  addToSheet,
  type CommandResult,
  type DataSheetListName,
  deleteSheet,
  duplicateSheet,
  fieldsFor,
  fieldsOfPart,
  giveSheet,
  makeSheetOwn,
  openSheet,
  removeFromSheet,
  SHEET_LISTS,
  SHEET_PARTS,
} from '../../src/editor';
import { applyChange, edit, type Plan, parsePlan, readField, renderPlanText, revertChange } from '../../src/plan';
import { deriveScene } from '../../src/scene';
import { straightPlan } from './plans';

/** The plan after a command: sound, with all of the change undone by its inverse and done again by its patches. */
function done(before: Plan, outcome: CommandResult): Plan {
  if (!outcome.ok) throw new Error(outcome.problem);
  const { plan } = outcome.transaction;
  expect(parsePlan(renderPlanText(plan)).ok).toBe(true);
  expect(revertChange(plan, outcome.transaction)).toEqual(before);
  expect(applyChange(before, outcome.transaction)).toEqual(plan);
  return plan;
}

const refused = (outcome: CommandResult) => (outcome.ok ? 'carried out' : outcome.problem);

/** Two machines of one family and one of another. */
function threeMachines(): Plan {
  return edit(straightPlan('direct-vent'), 'three', (draft) => {
    const [machine] = draft.machines;
    draft.machines.push(
      { ...machine!, id: 'machine-2', x: 6500 },
      { ...machine!, id: 'machine-3', sheet: 'tall-door', electrical: null, x: 6500, y: 4000 },
    );
  }).plan;
}

const nearly = (value: number): unknown => expect.closeTo(value, 8);

/** The same as far as the dust of arithmetic, which does not get into a plan. */
function near(value: unknown): unknown {
  if (typeof value === 'number') return nearly(value);
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) return value.map(near);
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, near(part)]));
}

const plan = straightPlan('direct-vent');
const own = done(plan, makeSheetOwn(plan, ['machine']));
const sheetsOf = ({ machines }: Plan) => machines.map(({ sheet }) => sheet);

describe('making a data sheet one’s own', () => {
  it('copies the family’s under a new id and name, and the machine refers to it', () => {
    expect(sheetsOf(own)).toEqual(['direct-vent-1']);
    const family = findFamily('direct-vent')!;
    expect(own.sheets).toEqual(near([{ ...family, id: 'direct-vent-1', name: `${family.name}, own figures` }]));
    expect(deriveScene(own).machines[0]?.sheet.width).toBe(family.width);
  });

  it('serves every machine that is chosen, one copy a family, and no other', () => {
    const three = threeMachines();
    expect(sheetsOf(done(three, makeSheetOwn(three, ['machine', 'machine-2', 'machine-3'])))).toEqual([
      'direct-vent-1',
      'direct-vent-1',
      'tall-door-1',
    ]);
    expect(sheetsOf(done(three, makeSheetOwn(three, ['machine-2', 'clean-table'])))).toEqual(['direct-vent', 'direct-vent-1', 'tall-door']);
  });

  it.each([
    { name: 'nothing', chosen: [], says: 'Choose a machine first.' },
    { name: 'a table', chosen: ['clean-table'], says: 'Choose a machine first.' },
    { name: 'one that has its own', chosen: ['machine'], says: 'This data sheet is your own already.' },
  ])('is refused for $name', ({ chosen, says }) => {
    expect(refused(makeSheetOwn(own, chosen))).toBe(says);
  });
});

describe('duplicating and deleting', () => {
  it('the copy serves the machines that are named; names and ids stay apart', () => {
    const twice = done(own, duplicateSheet(own, 'direct-vent-1', ['machine']));
    expect(sheetsOf(twice)).toEqual(['direct-vent-2']);
    const thrice = done(twice, duplicateSheet(twice, 'direct-vent-1'));
    expect(sheetsOf(thrice)).toEqual(['direct-vent-2']);
    expect(thrice.sheets.map(({ id }) => id)).toEqual(['direct-vent-1', 'direct-vent-2', 'direct-vent-3']);
    expect(new Set(thrice.sheets.map(({ name }) => name)).size).toBe(3);
    expect(refused(duplicateSheet(own, 'nothing'))).toBe('There is no such data sheet any more.');
  });

  it('one in use stays, with who uses it; one that is free goes', () => {
    const { marks } = deriveScene(own);
    const { name } = own.sheets[0]!;
    expect(refused(deleteSheet(own, 'direct-vent-1'))).toBe(`“${name}” stays: machine ${marks['machine']} uses it.`);
    const free = done(own, giveSheet(own, 'direct-vent', ['machine']));
    expect(done(free, deleteSheet(free, 'direct-vent-1')).sheets).toEqual([]);
    expect(refused(deleteSheet(plan, 'direct-vent'))).toBe('This data sheet is not in the plan.');
  });

  it('two machines that use it are both named', () => {
    const three = threeMachines();
    const both = done(three, makeSheetOwn(three, ['machine', 'machine-2']));
    expect(refused(deleteSheet(both, 'direct-vent-1'))).toMatch(/stays: machines \d and \d use it\.$/);
  });
});

describe('opening a data sheet', () => {
  it('keeps its id where it is free; the controls and version that it does not know are chosen anew', () => {
    const sheet = { ...findFamily('tall-door')!, id: 'mine', controls: [{ ...findFamily('tall-door')!.controls[0]!, id: 'post' }] };
    const next = done(own, openSheet(own, sheet, ['machine']));
    expect(next.machines[0]).toMatchObject({ sheet: 'mine', controls: 'post' });
    expect(next.sheets[1]).toEqual(near(sheet));
  });

  it('takes another id where its own is taken, by the plan or by a family', () => {
    for (const id of ['direct-vent-1', 'direct-vent', 'machine']) {
      const next = done(own, openSheet(own, { ...findFamily('tall-door')!, id }, []));
      expect(next.sheets[1]?.id).toBe(id === 'machine' ? 'machine-1' : 'direct-vent-2');
      expect(sheetsOf(next)).toEqual(['direct-vent-1']);
    }
  });
});

const LISTS = Object.keys(SHEET_LISTS) as DataSheetListName[];
const itemsOf = (of: Plan, name: DataSheetListName) => readField(of.sheets[0]!, SHEET_LISTS[name].path) as unknown[];

describe('lists of a data sheet', () => {
  it.each(LISTS)('%s grows in any place and shrinks again', (name) => {
    const before = itemsOf(own, name);
    for (const index of before.keys()) {
      const more = done(own, addToSheet(own, 'direct-vent-1', name, index));
      const after = itemsOf(more, name);
      expect(after.length).toBe(before.length + 1);
      expect(after.toSpliced(index + 1, 1)).toEqual(before);
      expect(done(more, removeFromSheet(more, 'direct-vent-1', name, index + 1))).toEqual(own);
    }
  });

  /** A data sheet whose lists have one member each, on a machine that asks for none of them but its controls. */
  const bare = edit(own, 'bare', (draft) => {
    draft.machines[0]!.electrical = null;
    draft.runs = [];
    for (const name of LISTS) itemsOf(draft, name).splice(1, 100);
  }).plan;

  it.each(LISTS.filter((name) => SHEET_LISTS[name].last !== null))('%s keeps its last member', (name) => {
    const free = edit(bare, 'free', (draft) => void (draft.machines = [])).plan;
    expect(refused(removeFromSheet(free, 'direct-vent-1', name, 0))).toMatch(/one .*at least\.$/);
  });

  it.each(LISTS.filter((name) => SHEET_LISTS[name].last === null))('%s may be empty, and begins again', (name) => {
    const empty = done(bare, removeFromSheet(bare, 'direct-vent-1', name, 0));
    expect(itemsOf(empty, name)).toEqual([]);
    expect(itemsOf(done(empty, addToSheet(empty, 'direct-vent-1', name, -1)), name)).toHaveLength(1);
  });

  it('a new point of the fan lies halfway to the next', () => {
    const [a, b] = itemsOf(own, 'fanCurve') as { airflow: number; pressure: number }[];
    const point = itemsOf(done(own, addToSheet(own, 'direct-vent-1', 'fanCurve', 0)), 'fanCurve')[1];
    expect(point).toEqual({
      airflow: expect.closeTo((a!.airflow + b!.airflow) / 2, 9),
      pressure: expect.closeTo((a!.pressure + b!.pressure) / 2, 9),
    });
  });

  it.each([
    {
      name: 'controls' as const,
      index: 0,
      says: /^“Front, at the left corner” stays: the controls of machine \d are there\.$/,
      controls: 'front-left',
    },
    { name: 'controls' as const, index: 1, says: /^“Front, at the right corner” stays/, controls: 'front-right' },
    { name: 'electrical' as const, index: 0, says: /^208 V, three-phase stays: machine \d is to have it\.$/, controls: 'front-left' },
    {
      name: 'connections' as const,
      index: 6,
      says: /^The collar stays: the duct run of machine \d begins there\.$/,
      controls: 'front-left',
    },
  ])('what is in use stays in $name, at $index', ({ name, index, says, controls }) => {
    const used = edit(own, 'used', (draft) => void Object.assign(draft.machines[0]!, { controls, electrical: 'v208-3ph' })).plan;
    expect(refused(removeFromSheet(used, 'direct-vent-1', name, index))).toMatch(says);
  });

  it('a list that is not there is refused', () => {
    expect(refused(addToSheet(own, 'nothing', 'controls', 0))).toMatch(/not in the data sheet any more/);
    const hood = edit(own, 'hood', (draft) => void (draft.sheets[0]!.vent = { kind: 'hood' })).plan;
    expect(refused(addToSheet(hood, 'direct-vent-1', 'fanCurve', 0))).toMatch(/not in the data sheet any more/);
  });
});

describe('parts of the form', () => {
  const fields = fieldsFor(own, deriveScene(own), 'direct-vent-1');

  it('hold every key of the data sheet once', () => {
    const keys = SHEET_PARTS.flatMap((part) => part.keys);
    expect([...keys].sort()).toEqual(
      Object.keys(dataSheetSchema.shape)
        .filter((key) => key !== 'id')
        .sort(),
    );
  });

  it('hold every field once, the members of a list together', () => {
    const shown = SHEET_PARTS.flatMap((part) => fieldsOfPart(part, fields).flatMap((run) => run.fields));
    expect(new Set(shown)).toEqual(new Set(fields));
    expect(shown).toHaveLength(fields.length);
    const vent = fieldsOfPart(SHEET_PARTS.find(({ title }) => title === 'Vent')!, fields);
    expect(vent.map(({ list, index }) => [list, index])).toEqual([
      [null, null],
      ...itemsOf(own, 'fanCurve').map((_, index) => ['fanCurve', index]),
    ]);
  });

  it('call every field by a word or a few', () => {
    expect(fields.filter(({ label }) => label.length > 34 || label === '').map(({ label }) => label)).toEqual([]);
  });
});
