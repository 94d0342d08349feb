import { describe, expect, it } from 'vitest';
import { formatField } from '../../src/editor';
import type { FieldKind, FieldOption, FieldValue } from '../../src/editor/fields/field';
import { readFieldText } from '../../src/editor/fields/fieldText';

const field = (
  kind: FieldKind,
  more: { of?: 'volumeFlow' | 'temperature' | null; nullable?: boolean; options?: readonly FieldOption[] } = {},
) => ({ kind, of: null, nullable: false, options: [], ...more }) as Parameters<typeof readFieldText>[0];
const read = (kind: FieldKind, text: string, units: 'us' | 'metric', more = {}) => {
  const result = readFieldText(field(kind, more), text, units);
  return result.ok ? result.value : 'refused';
};
/** With plain spaces, as people type them. */
const show = (kind: FieldKind, value: FieldValue, units: 'us' | 'metric', more = {}) =>
  formatField({ ...field(kind, more), value }, units).replace(/[\u00a0\u202f\u2009]/g, ' ');

const OPTIONS = [
  { value: 3, label: 'three-phase' },
  { value: true, label: 'yes' },
  { value: 'roof', label: 'the roof' },
];

describe('typed and stored', () => {
  it.each<[FieldKind, string, 'us' | 'metric', number]>([
    ['length', '10', 'us', 254],
    ['length', '10', 'metric', 10],
    ['coordinate', '-10', 'us', -254],
    ['coordinate', '-10', 'metric', -10],
    ['angle', '37.5°', 'us', 37.5],
    ['slope', '2 %', 'metric', 0.02],
    ['temperature', '212', 'us', 100],
    ['temperature', '100', 'metric', 100],
    ['pressure', '140', 'metric', 140],
    ['pressure', '10 psi', 'us', 68.9476],
    ['voltage', '208', 'us', 208],
    ['current', '40', 'us', 40],
    ['power', '9', 'us', 9],
    ['volume', '2.9', 'metric', 2.9],
    ['volume', '1 gal', 'us', 3.78541],
    ['seconds', '45', 'us', 45],
    ['seconds', '2 min', 'us', 120],
    ['count', '1200', 'us', 1200],
    ['count', '1 200', 'us', 1200],
    ['count', '1,5', 'us', 1.5],
    ['count', '-3', 'us', -3],
    ['count', '+3.25', 'us', 3.25],
  ])('%s “%s” (%s) is %d', (kind, text, units, value) => {
    expect(read(kind, text, units)).toBeCloseTo(value, 3);
  });

  it.each<[FieldKind, string]>([
    ['length', 'wide'],
    ['coordinate', ''],
    ['angle', 'steep'],
    ['slope', 'steep'],
    ['temperature', 'hot'],
    ['pressure', 'high'],
    ['voltage', 'x'],
    ['current', 'x'],
    ['power', 'x'],
    ['volume', 'x'],
    ['seconds', 'x'],
    ['count', '1.2.3'],
    ['count', 'x1'],
    ['count', '1x'],
    ['choice', 'moon'],
    ['toggle', 'perhaps'],
    ['quantity', 'x'],
  ])('%s “%s” is refused with a reason', (kind, text) => {
    const result = readFieldText(field(kind, { options: OPTIONS }), text, 'us');
    expect(result.ok ? '' : result.problem).toMatch(/./);
  });

  it('a refusal names what was typed', () => {
    expect(readFieldText(field('count'), ' many ', 'us')).toEqual({ ok: false, problem: '“many” is not a number.' });
    expect(readFieldText(field('choice', { options: OPTIONS }), ' moon ', 'us')).toEqual({
      ok: false,
      problem: '“moon” is not one of: three-phase, yes, the roof.',
    });
  });

  it.each([
    ['3', 3],
    [' Three-Phase ', 3],
    ['YES', true],
    ['true', true],
    ['the roof', 'roof'],
    ['Roof', 'roof'],
  ])('an option by its word or its stored word: “%s”', (text, value) => {
    expect(read('choice', text, 'us', { options: OPTIONS })).toBe(value);
  });

  it.each(['', '  ', '?', 'not known', ' Unknown '])('“%s” is unknown where that may be', (text) => {
    expect(readFieldText(field('length', { nullable: true }), text, 'us')).toEqual({ ok: true, value: null });
    expect(readFieldText(field('length'), text, 'us').ok).toBe(false);
  });

  it('a text is kept without its ends', () => {
    expect(read('text', '  Alder  Street ', 'us')).toBe('Alder  Street');
  });
});

describe('stored and shown', () => {
  it.each<[FieldKind, number, 'us' | 'metric', string]>([
    ['length', 762, 'us', '2′ 6″'],
    ['length', 762, 'metric', '762 mm'],
    ['coordinate', 762, 'metric', '762 mm'],
    ['angle', 37.5, 'us', '37.5°'],
    ['temperature', 100, 'us', '212 °F'],
    ['temperature', 100, 'metric', '100 °C'],
    ['pressure', 140, 'metric', '140 kPa'],
    ['voltage', 208, 'us', '208 V'],
    ['current', 40, 'us', '40 A'],
    ['power', 9, 'us', '9 kW'],
    ['volume', 2.9, 'metric', '2.9 L'],
    ['seconds', 45.5, 'us', '45.5 s'],
    ['count', 1200, 'us', '1200'],
  ])('%s %d (%s) is “%s”', (kind, value, units, text) => {
    expect(show(kind, value, units)).toBe(text);
  });

  it('unknown is empty; an option is its word; a text is itself', () => {
    expect(show('length', null, 'us')).toBe('');
    expect(show('choice', 3, 'us', { options: OPTIONS })).toBe('three-phase');
    expect(show('toggle', true, 'us', { options: OPTIONS })).toBe('yes');
    expect(show('choice', 'moon', 'us', { options: OPTIONS })).toBe('moon');
    expect(show('text', 'Alder', 'us')).toBe('Alder');
    expect(show('slope', 0.02, 'metric')).toMatch(/2(\.0)? %|1:50/);
  });
});
