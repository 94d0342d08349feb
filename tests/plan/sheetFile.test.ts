import { describe, expect, it } from 'vitest';
import { FAMILIES, findFamily } from '../../src/catalog';
import {
  createPlan,
  describeProblem,
  parseDataSheet,
  parseDataSheetBytes,
  parsePlan,
  renderDataSheetText,
  renderPlanText,
} from '../../src/plan';

const sheet = { ...findFamily('direct-vent')!, id: 'own-1', name: 'Direct vent of the bakery' };
const text = renderDataSheetText(sheet);

/** The sound file with one thing wrong. */
function swap(from: string, to: string): string {
  if (!text.includes(from)) throw new Error(`nothing was changed: ${from}`);
  return text.replace(from, to);
}

describe('a data sheet in a file', () => {
  it.each(FAMILIES)('comes back as it went: $id', (family) => {
    const once = renderDataSheetText(family);
    const read = parseDataSheet(once);
    expect(read).toEqual({ ok: true, sheet: family });
    expect(read.ok && renderDataSheetText(read.sheet)).toBe(once);
    expect(parseDataSheetBytes(new TextEncoder().encode(`\uFEFF${once}`))).toEqual(read);
  });

  it('of version 1 is still read: what came later is not known of it', () => {
    const old = JSON.parse(renderDataSheetText(findFamily('heat-recovery')!));
    const { idle: _idle, thermometers: _thermometers, vent, ...rest } = old.sheet;
    const { listedCondensing: _listed, sensible: _sensible, latent: _latent, ...oldVent } = vent;
    expect(parseDataSheet(JSON.stringify({ ...old, version: 1, sheet: { ...rest, vent: oldVent } }))).toEqual({
      ok: true,
      sheet: {
        ...findFamily('heat-recovery')!,
        idle: null,
        thermometers: null,
        vent: { ...findFamily('heat-recovery')!.vent, listedCondensing: null, sensible: null, latent: null },
      },
    });
  });

  it('of version 2 is still read: its thermometers are not known', () => {
    const old = JSON.parse(text);
    const { thermometers: _thermometers, ...rest } = old.sheet;
    expect(parseDataSheet(JSON.stringify({ ...old, version: 2, sheet: rest }))).toEqual({
      ok: true,
      sheet: { ...sheet, thermometers: null },
    });
  });

  it('says what it is', () => {
    expect(JSON.parse(text)).toMatchObject({ format: 'rackway-sheet', version: 3, sheet: { id: 'own-1' } });
    expect(parsePlan(text)).toMatchObject({ ok: false, problem: { reason: expect.stringContaining('found text "rackway-sheet"') } });
  });

  it.each([
    { name: 'half a file', file: text.slice(0, 300), says: /line \d+, column \d+/ },
    { name: 'a plan', file: renderPlanText(createPlan()), says: /^format: expected "rackway-sheet", found text "rackway-plan"/ },
    { name: 'a list', file: '[]', says: /^expected an object, found a list of 0/ },
    { name: 'a newer version', file: swap('"version": 3', '"version": 4'), says: /^version: expected 3, found 4/ },
    {
      name: 'a key too many',
      file: swap('"width": 737', '"width": 737, "colour": 1'),
      says: /^sheet\.colour: this key is not part of a data sheet/,
    },
    { name: 'a key too few', file: swap('"width": 737,', ''), says: /^sheet\.width: expected a number, found nothing/ },
    {
      name: 'a number out of range',
      file: swap('"width": 737', '"width": 7370'),
      says: /^sheet\.width: expected at most 3000, found 7370/,
    },
    {
      name: 'a text for a number',
      file: swap('"width": 737', '"width": "wide"'),
      says: /^sheet\.width: expected a number, found text "wide"/,
    },
    {
      name: 'two of one id',
      file: swap('"front-right"', '"front-left"'),
      says: /^sheet\.controls\[1\]\.id: the id "front-left" is already taken/,
    },
    {
      name: 'controls off their side',
      file: swap('"to": 732', '"to": 800'),
      says: /^sheet\.controls\[1\]\.to: the controls end at 800 mm/,
    },
    {
      name: 'a least pressure of the rinse above the most',
      file: swap('"least": 103421', '"least": 203421'),
      says: /^sheet\.rinsePressure\.least: expected no more than the most of 172369 Pa, found 203421 Pa$/,
    },
    { name: 'no doors', file: swap('["left", "right", "front"]', '[]'), says: /^sheet\.doors: expected at least 1 items/ },
    { name: 'a key that poisons', file: swap('"width": 737', '"width": 737, "__proto__": {}'), says: /this word cannot be a key/ },
  ])('is refused with place and reason: $name', ({ file, says }) => {
    const read = parseDataSheet(file);
    expect(read.ok ? 'read' : describeProblem(read.problem)).toMatch(says);
  });

  it('is refused where the box of its heat recovery stands on its head', () => {
    const recovery = findFamily('heat-recovery')!;
    const box = recovery.vent.kind === 'recovery' ? { ...recovery.vent.box, zTo: recovery.vent.box.zFrom - 10 } : {};
    const read = parseDataSheet(renderDataSheetText({ ...recovery, id: 'own-1', vent: { ...recovery.vent, box } as typeof recovery.vent }));
    expect(read.ok ? 'read' : describeProblem(read.problem)).toMatch(/^sheet\.vent\.box\.zTo: expected an end beyond its start of/);
  });

  it('is refused where it is too large or no text', () => {
    expect(parseDataSheetBytes(new Uint8Array(5_000_001))).toMatchObject({ ok: false, problem: { code: 'too-big' } });
    expect(parseDataSheetBytes(new Uint8Array([0xff, 0xfe, 0x00]))).toMatchObject({ ok: false, problem: { code: 'not-utf8' } });
  });
});
