import { describe, expect, it } from 'vitest';
import { z } from 'zod/mini';
import { SIDES } from '../../src/catalog';
import { planSchema } from '../../src/plan';
import { fieldWords, optionWords } from '../../src/text';
import { FIELDS } from '../../src/text/en/fields';
import { OPTIONS } from '../../src/text/en/options';

const PERMANENT = ['id', 'format', 'version'];

/** A place of the plan, without the places in lists, and what can be chosen there. */
interface Place {
  at: string;
  options: (string | number | boolean)[];
}

/** Every place where the schema of the plan holds a value of its own: a second opinion beside the types. */
function placesOf(schema: unknown, at = ''): Place[] {
  if (schema instanceof z.ZodMiniNullable) return placesOfNullable(schema.def.innerType, at);
  if (schema instanceof z.ZodMiniArray) return placesOf(schema.def.element, at);
  if (schema instanceof z.ZodMiniDiscriminatedUnion) return schema.def.options.flatMap((option) => placesOf(option, at));
  if (schema instanceof z.ZodMiniUnion) return [{ at, options: schema.def.options.flatMap(choicesOf) }];
  if (!(schema instanceof z.ZodMiniObject)) return [{ at, options: choicesOf(schema) }];
  const keys = Object.keys(schema.shape).filter((key) => !PERMANENT.includes(key));
  return keys.flatMap((key) => placesOf(schema.shape[key], at === '' ? key : `${at}.${key}`));
}

/** A part that may be missing is a field itself: whether it is there. */
function placesOfNullable(inner: unknown, at: string): Place[] {
  return [...(inner instanceof z.ZodMiniObject ? [{ at, options: [] }] : []), ...placesOf(inner, at)];
}

function choicesOf(schema: unknown): (string | number | boolean)[] {
  if (schema instanceof z.ZodMiniEnum) return schema.options;
  if (schema instanceof z.ZodMiniLiteral) return schema.def.values as (string | number)[];
  return schema instanceof z.ZodMiniBoolean ? [true, false] : [];
}

const places = placesOf(planSchema);

describe('the words of fields', () => {
  it('are those of the schema’s fields, all of them and no others', () => {
    const doors = SIDES.map((side) => `sheets.doors.${side}`);
    const fields = places.flatMap(({ at }) => (at === 'sheets.doors' ? doors : at));
    expect(Object.keys(FIELDS).toSorted()).toEqual([...new Set([...fields, 'room.outline.length'])].toSorted());
  });

  it('name each field; the help of a field says more or nothing', () => {
    const blank = Object.entries(FIELDS).filter(([, { label, help }]) => label.trim() === '' || help !== help.trim());
    expect(blank).toEqual([]);
  });

  it('call none as it is stored', () => {
    const stored = Object.entries(FIELDS).filter(([key, { label }]) => label === key.split('.').at(-1));
    expect(stored.map(([key]) => key)).toEqual([]);
  });

  it.each([
    { place: 'tables.legs.length', label: 'Length', help: 'Length along the rack centre line' },
    { place: 'tables.deck.heights', label: 'Deck height', help: 'Deck height' },
    { place: 'sheets.height', label: 'Height', help: 'Height: top of the machine with its doors shut' },
    { place: 'runs.fan', label: 'Fan in the run', help: '' },
    { place: 'sheets.thermometers', label: 'Thermometers', help: 'Thermometers: in each tank, and at the final rinse' },
  ])('are found by the place of a field: $place', ({ place, label, help }) => expect(fieldWords(place)).toEqual({ label, help }));

  it('are not made up for what is no field', () => {
    expect(() => fieldWords('tables.colour')).toThrow('there are no words for the field “tables.colour”');
  });
});

describe('the words of options', () => {
  it('are those of what can be chosen somewhere', () => {
    const keys = places.flatMap(({ at, options }) => options.flatMap((option) => [`${option}`, `${at.split('.').at(-1)}.${option}`]));
    expect(Object.keys(OPTIONS).filter((key) => !keys.includes(key))).toEqual([]);
  });

  it.each([
    { value: 'direct', field: 'vent', words: 'a run of its own' },
    { value: 'direct', field: 'waste', words: 'directly into the drain' },
    { value: 1, field: 'phase', words: 'single-phase' },
    { value: true, field: 'sealed', words: 'yes' },
    { value: 'work-table', field: 'kind', words: 'work table' },
  ])('$value of $field: $words', ({ value, field, words }) => expect(optionWords(value, field)).toBe(words));
});
