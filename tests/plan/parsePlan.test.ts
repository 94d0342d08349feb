import { describe, expect, it } from 'vitest';
import { type DataSheet, findFamily } from '../../src/catalog';
import { createLinePlan, describeProblem, type Plan, parsePlan, parsePlanBytes, renderPlanText } from '../../src/plan';

const plan = createLinePlan({ family: 'recirculating-hot-water', configuration: 'left-front', hand: 'left-to-right' });

/** The plan as raw JSON, with one thing done to it. */
function broken(change: (raw: Raw) => void): string {
  const raw = JSON.parse(JSON.stringify(plan)) as Raw;
  change(raw);
  return JSON.stringify(raw);
}

/** A plan in which anything may be wrong. */
type Loose<T> = T extends (infer U)[] ? Loose<U>[] : T extends object ? { [K in keyof T]: Loose<T[K]> } & Record<string, unknown> : unknown;
type Raw = Loose<Plan>;

/** The plan with a data sheet of its own, one of heat recovery with something done to it. */
function withSheet(change: (sheet: DataSheet) => void): string {
  const sheet = structuredClone(findFamily('heat-recovery'));
  if (sheet === undefined) throw new Error('there is no family that wins heat back');
  change(sheet);
  return broken((raw) => void raw.sheets.push({ ...sheet, id: 'own-sheet' }));
}

const REFUSED: { name: string; text: string; words: string }[] = [
  { name: 'a list', text: '[]', words: 'not a Rackway plan: expected "format": "rackway-plan", found a list of 0' },
  {
    name: 'another document',
    text: '{"format": "letter"}',
    words: 'not a Rackway plan: expected "format": "rackway-plan", found text "letter"',
  },
  { name: 'no version', text: '{"format": "rackway-plan"}', words: 'version: expected a version number of 1 or more, found nothing' },
  {
    name: 'version as text',
    text: '{"format": "rackway-plan", "version": "1"}',
    words: 'version: expected a version number of 1 or more, found text "1"',
  },
  {
    name: 'half a version',
    text: broken((r) => void (r.version = 1.5)),
    words: 'version: expected a version number of 1 or more, found 1.5',
  },
  {
    name: 'newer version',
    text: broken((r) => void (r.version = 5)),
    words: 'version: the plan has version 5, newer than version 4, the newest that this program reads',
  },
  {
    name: 'version before the first',
    text: broken((r) => void (r.version = 0)),
    words: 'version: the plan has version 0; versions before 1 were never released',
  },
  {
    name: 'text for a number',
    text: broken((r) => void (at(r.room.outline, 3).x = 'abc')),
    words: 'room.outline[3].x: expected a number, found text "abc"',
  },
  {
    name: 'null for a number',
    text: broken((r) => void (at(r.machines, 0).x = null)),
    words: 'machines[0].x: expected a number, found null',
  },
  {
    name: 'a field left out',
    text: broken((r) => void delete at(r.machines, 0).y),
    words: 'machines[0].y: expected a number, found nothing',
  },
  { name: 'an unknown key', text: broken((r) => void (r.room.colour = 'red')), words: 'room.colour: this key is not part of a plan' },
  {
    name: 'an unknown key deep inside',
    text: broken((r) => void (at(at(r.tables, 0).fittings, 1).taps = 2)),
    words: 'tables[0].fittings[1].taps: this key is not part of a plan',
  },
  {
    name: 'a kind that is none',
    text: broken((r) => void (at(r.room.openings, 0).kind = 'hatch')),
    words: 'room.openings[0].kind: expected "door", "double-door", "cased-opening", "pass-window" or "window", found text "hatch"',
  },
  {
    name: 'a fitting that is none',
    text: broken((r) => void (at(at(r.tables, 0).fittings, 0).kind = 'tap')),
    words: 'tables[0].fittings[0].kind: expected "drop-off", "scrap", "sink", "landing" or "overshelf", found text "tap"',
  },
  { name: 'two phases', text: broken((r) => void (r.supply.phase = 2)), words: 'supply.phase: expected 1 or 3, found 2' },
  {
    name: 'below the range',
    text: broken((r) => void (at(at(r.tables, 0).legs, 0).length = 5)),
    words: 'tables[0].legs[0].length: expected at least 10, found 5',
  },
  {
    name: 'above the range',
    text: broken((r) => void (at(r.machines, 0).x = 1e9)),
    words: 'machines[0].x: expected at most 500000, found 1000000000',
  },
  {
    name: 'an id with a space',
    text: broken((r) => void (at(r.things, 0).id = 'My Shelf')),
    words: 'things[0].id: an id is lower-case letters, digits and hyphens, beginning with a letter; found text "My Shelf"',
  },
  {
    name: 'an id that is no name',
    text: broken((r) => void (at(r.things, 0).id = 'constructor')),
    words: 'things[0].id: this word cannot be an id; found text "constructor"',
  },
  {
    name: 'an id twice',
    text: broken((r) => void (at(r.things, 0).id = 'machine')),
    words: 'things[0].id: the id "machine" is already taken by machines[0]',
  },
  {
    name: 'an id twice, of a fitting',
    text: broken((r) => void (at(at(r.tables, 1).fittings, 0).id = 'scrap')),
    words: 'tables[1].fittings[0].id: the id "scrap" is already taken by tables[0].fittings[2]',
  },
  {
    name: 'a table joined to no machine',
    text: broken((r) => void (at(r.tables, 1).place.machine = 'machine-7')),
    words: 'tables[1].place.machine: there is no machine "machine-7" in this plan',
  },
  {
    name: 'a machine of no family',
    text: broken((r) => void (at(r.machines, 0).sheet = 'steam-engine')),
    words: 'machines[0].sheet: there is no data sheet "steam-engine", in this plan or among the families',
  },
  {
    name: 'controls at no position',
    text: broken((r) => void (at(r.machines, 0).controls = 'back')),
    words:
      'machines[0].controls: the data sheet "recirculating-hot-water" has no controls position "back" (it has front-left, front-right)',
  },
  {
    name: 'a variant that is none',
    text: broken((r) => void (at(r.machines, 0).electrical = 'v12')),
    words:
      'machines[0].electrical: the data sheet "recirculating-hot-water" has no electrical variant "v12" (it has v208-3ph, v208-1ph, v240-3ph, v480-3ph)',
  },
  {
    name: 'a room that crosses itself',
    text: broken((r) => swap(r.room.outline, 1, 2)),
    words: 'room.outline[2]: the walls "wall-back" and "wall-right" cross or touch',
  },
  {
    name: 'a room without floor',
    text: broken((r) => r.room.outline.forEach((corner, index) => void Object.assign(corner, { x: index * 1000, y: index * 500 }))),
    words: 'room.outline: the room has no floor: its corners lie on one line',
  },
  {
    name: 'a wall without length',
    text: broken((r) => void Object.assign(at(r.room.outline, 1), { x: at(r.room.outline, 0).x, y: at(r.room.outline, 0).y })),
    words: 'room.outline[0]: the wall "wall-back" has no length: two corners lie on the same place',
  },
  {
    name: 'two corners',
    text: broken((r) => void r.room.outline.splice(2)),
    words: 'room.outline: expected at least 3 items, found a list of 2',
  },
  {
    name: 'an opening on no wall',
    text: broken((r) => void (at(r.room.openings, 0).wall = 'wall-9')),
    words: 'room.openings[0].wall: there is no wall "wall-9": a wall bears the id of the corner where it begins',
  },
  {
    name: 'an opening beyond its wall',
    text: broken((r) => void Object.assign(at(r.room.openings, 0), { from: 9000 })),
    words: 'room.openings[0]: the opening ends at 9914 mm, beyond the end of its wall at 4812.5 mm',
  },
  {
    name: 'an opening over another',
    text: broken((r) => void r.room.openings.push({ ...at(r.room.openings, 0), id: 'door-2' })),
    words: 'room.openings[1]: the opening overlaps the opening "door" on the same wall',
  },
  {
    name: 'a turn before the first stretch',
    text: broken((r) => void (at(at(r.tables, 0).legs, 0).turnDeg = 90)),
    words: 'tables[0].legs[0].turnDeg: the first stretch of a table has no turn before it: expected 0, found 90',
  },
  {
    name: 'deck heights too many',
    text: broken(
      (r) => void (at(r.tables, 0).deck = { kind: 'heights', heights: [864, 870, 880] } as unknown as Raw['tables'][number]['deck']),
    ),
    words: 'tables[0].deck.heights: a deck height is given at the joint, at each turn and at the end: expected 2, found 3',
  },
  {
    name: 'a fitting over the end',
    text: broken((r) => void (at(at(r.tables, 1).fittings, 0).at = 1500)),
    words: 'tables[1].fittings[0]: the fitting reaches from 735 to 2265 mm on a table of 1600 mm',
  },
  {
    name: 'a rack line beside the table',
    text: broken((r) => void (at(r.tables, 0).rackLineFromEdge = 800)),
    words: 'tables[0].rackLineFromEdge: the rack centre line lies 800 mm from the edge of a table 762 mm deep',
  },
  {
    name: 'a rinse whose least pressure lies above its most',
    text: withSheet((sheet) => void Object.assign(sheet, { rinsePressure: { least: 200_000, most: 150_000 } })),
    words: 'sheets[0].rinsePressure.least: expected no more than the most of 150000 Pa, found 200000 Pa',
  },
  {
    name: 'a recovery box with its top under its underside',
    text: withSheet(({ vent }) => void Object.assign((vent as { box: object }).box, { zFrom: 2000, zTo: 1500 })),
    words: 'sheets[0].vent.box.zTo: expected an end beyond its start of 2000 mm, found 1500 mm',
  },
  {
    name: 'a recovery box without height',
    text: withSheet(({ vent }) => void Object.assign((vent as { box: object }).box, { zFrom: 2000, zTo: 2000 })),
    words: 'sheets[0].vent.box.zTo: expected an end beyond its start of 2000 mm, found 2000 mm',
  },
];

function at<T>(list: readonly T[], index: number): T {
  const item = list[index];
  if (item === undefined) throw new Error(`no item ${index}`);
  return item;
}

function swap<T>(list: T[], a: number, b: number): void {
  [list[a], list[b]] = [at(list, b), at(list, a)];
}

describe('parsePlan', () => {
  it('reads a plan as it was written', () => expect(parsePlan(renderPlanText(plan))).toEqual({ ok: true, plan, migratedFrom: null }));

  it.each(REFUSED)('refuses: $name', ({ text, words }) => {
    const result = parsePlan(text);
    expect(result.ok ? 'read' : describeProblem(result.problem)).toBe(words);
  });

  it('takes an opening above another on the same wall', () => {
    const text = broken(
      (r) => void r.room.openings.push({ ...at(r.room.openings, 0), id: 'light', kind: 'window', sill: 2100, height: 300 }),
    );
    expect(parsePlan(text).ok).toBe(true);
  });

  it('reads a sheet whose plate names one pressure', () =>
    expect(parsePlan(withSheet((sheet) => void (sheet.rinsePressure = { least: 138_000, most: 138_000 }))).ok).toBe(true));

  it('reads with a byte order mark', () => expect(parsePlan(`\uFEFF${renderPlanText(plan)}`).ok).toBe(true));
});

describe('parsePlanBytes', () => {
  const bytes = (text: string) => new TextEncoder().encode(text);
  const padded = (size: number) => {
    const text = renderPlanText(plan);
    return `${text}${' '.repeat(size - bytes(text).byteLength)}`;
  };

  it('reads the same plan, and text beyond ASCII', () => {
    const named = { ...plan, title: { ...plan.title, project: 'École № 5 “Größe” 🍽' } };
    expect(parsePlanBytes(bytes(renderPlanText(named)))).toEqual({ ok: true, plan: named, migratedFrom: null });
  });

  it('reads exactly 5 MB and refuses one byte more, counted in bytes', () => {
    expect(parsePlanBytes(bytes(padded(5_000_000))).ok).toBe(true);
    const result = parsePlanBytes(bytes(padded(5_000_001)));
    expect(result.ok ? '' : describeProblem(result.problem)).toBe('the file has 5000001 bytes, more than the 5000000 that a plan may have');
    expect(parsePlan(padded(5_000_000)).ok).toBe(true);
    expect(parsePlan(padded(5_000_001)).ok).toBe(false);
    // As many characters as bytes are allowed, but two bytes each; and pairs of four.
    for (const [letter, count, size] of [
      ['é', 3_000_000, 2],
      ['€', 2_000_000, 3],
      ['🍽', 1_500_000, 4],
    ] as const) {
      const text = JSON.stringify(letter.repeat(count));
      const refusal = parsePlan(text);
      expect(refusal.ok ? '' : refusal.problem.reason).toContain(`${count * size + 2} bytes`);
    }
  });

  it.each([
    ['a cut sequence', [0x22, 0xc3, 0x22]],
    ['latin-1', [0x22, 0xe9, 0x22]],
    ['utf-16', [0xff, 0xfe, 0x22, 0x00]],
  ])('refuses what is not UTF-8: %s', (_name, list) => {
    const result = parsePlanBytes(new Uint8Array(list));
    expect(result.ok ? '' : describeProblem(result.problem)).toBe('the file is not text in UTF-8');
  });
});
