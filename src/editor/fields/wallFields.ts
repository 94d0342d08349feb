import { distance } from '../../geometry';
import { type Corner, type FieldPath, type Plan, wallEnds } from '../../plan';
import { fieldWords } from '../../text';
import type { Field } from './field';
import { groupOf } from './fieldGroups';
import { leafOf } from './leaf';
import { schemaAt } from './schemaAt';

/** The card of a wall: its length, which is no field of the plan but can be typed as if it were, and its two ends. */
export function wallFields(plan: Plan, wall: string): Field[] {
  const ends = wallEnds(plan.room, wall);
  if (ends === null) return [];
  const [from, to] = ends;
  return [lengthField(plan, from, to), ...cornerFields(plan, from, 'Start'), ...cornerFields(plan, to, 'End')];
}

/** Path of a wall's length: typing it moves the wall at its end. */
export function wallLengthPath(plan: Plan, wall: string): FieldPath {
  return ['room', 'outline', plan.room.outline.findIndex((corner) => corner.id === wall), 'length'];
}

function lengthField(plan: Plan, from: Corner, to: Corner): Field {
  const path = wallLengthPath(plan, from.id);
  return {
    path,
    ...fieldWords('room.outline.length'),
    group: groupOf('room.outline.length'),
    part: null,
    kind: 'length',
    of: null,
    value: distance(from, to),
    min: 1,
    max: null,
    nullable: false,
    options: [],
  };
}

function cornerFields(plan: Plan, corner: Corner, part: string): Field[] {
  const index = plan.room.outline.indexOf(corner);
  return (['x', 'y'] as const).flatMap((key): Field[] => {
    const path = ['room', 'outline', index, key];
    const schema = schemaAt(plan, path);
    const leaf = schema === null ? null : leafOf(schema);
    const place = `room.outline.${key}`;
    return leaf === null ? [] : [{ path, ...fieldWords(place), group: groupOf(place), part, value: corner[key], ...leaf }];
  });
}
