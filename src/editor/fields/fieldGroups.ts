import type { Plan, PlanPlace } from '../../plan';
import type { FieldKey } from '../../text';
import type { FieldGroup } from './field';

/** The part of its card where a field stands: its own, else that of what it belongs to. */
export function groupOf(place: string): FieldGroup {
  const groups: Readonly<Record<string, FieldGroup>> = GROUPS;
  return groups[place] ?? groupOf(place.slice(0, place.lastIndexOf('.')));
}

/** Each field of the plan begins with one of these, so that each has a group. */
type Root = Exclude<keyof Plan, 'format' | 'version'>;

const GROUPS: Readonly<Record<Root, FieldGroup> & Partial<Record<PlanPlace | FieldKey, FieldGroup>>> = {
  title: 'title',
  room: 'room',
  'room.outline': 'corners',
  'room.outline.length': 'size',
  'room.openings': 'size',
  'room.openings.kind': 'identity',
  'room.openings.wall': 'place',
  'room.openings.from': 'place',
  'room.openings.swing': 'openings',
  'room.openings.hinge': 'openings',
  'room.columns': 'place',
  'room.columns.width': 'size',
  'room.columns.depth': 'size',
  'room.floorDrains': 'place',
  'room.floorDrains.kind': 'identity',
  'room.floorDrains.size': 'size',
  'room.floorDrains.waste': 'waste',
  'room.stubs': 'place',
  'room.stubs.kind': 'identity',
  machines: 'place',
  'machines.sheet': 'identity',
  'machines.controls': 'controls',
  'machines.electrical': 'controls',
  'machines.hookUp': 'hookUp',
  'machines.hookUp.plateRecord': 'record',
  tables: 'size',
  'tables.role': 'identity',
  'tables.place': 'joint',
  'tables.legs': 'legs',
  'tables.deck': 'deck',
  'tables.make': 'make',
  'tables.fittings': 'fittings',
  things: 'size',
  'things.kind': 'identity',
  'things.name': 'identity',
  'things.ware': 'identity',
  'things.x': 'place',
  'things.y': 'place',
  'things.rotationDeg': 'place',
  'things.basins': 'basins',
  hoods: 'size',
  'hoods.x': 'place',
  'hoods.y': 'place',
  'hoods.rotationDeg': 'place',
  'hoods.exhaust': 'air',
  'hoods.cavityAir': 'air',
  runs: 'size',
  'runs.machine': 'identity',
  'runs.points': 'points',
  'runs.fan': 'fan',
  'runs.duct': 'duct',
  demand: 'demand',
  supply: 'supply',
  order: 'order',
  air: 'air',
  finish: 'finish',
  pipes: 'pipes',
  tariff: 'tariff',
  codes: 'codes',
  settings: 'settings',
  sheets: 'sheet',
};
