import { waivedHoodExhaust, waivedHoodExhaustRecord } from '../../engineering';
import type { Appliance, Scene } from '../../scene';
import { compute } from '../compute';
import type { FigureReading, FigureRule } from '../types';

export const rule: FigureRule = {
  id: 'waived-hood-exhaust',
  title: 'Exhaust of the room for machines without a hood',
  group: 'air',
  unit: 'm3/s',
  derive,
};

/** A machine with its own vent has a separate removal system and does not count. */
function derive(scene: Scene): FigureReading[] {
  const bare = scene.appliances.filter((machine) => machine.sheet.vent.kind !== 'direct' && !isCovered(scene, machine));
  if (bare.length === 0) return [];
  const inputs = { floorM2: scene.room.areaMm2 / 1e6, appliances: bare.length };
  return [
    {
      subjects: bare.map(({ machine }) => machine.id),
      ...compute(waivedHoodExhaustRecord, waivedHoodExhaust, inputs),
      note: noteFor(bare),
    },
  ];
}

const isCovered = (scene: Scene, { machine }: Appliance) => scene.hooded.includes(machine.id);

const noteFor = (bare: readonly Appliance[]) =>
  bare.every(({ sheet }) => sheet.vent.kind === 'recovery')
    ? 'Where the code counts a machine that recovers its heat; one that is listed as condensing may be free of it.'
    : 'Only where the ventilation of the room is designed to take the heat and the moisture.';
