import type { PlacedHood, PlacedMachine, Scene } from '../../scene';
import { hoodName } from '../support/airNames';
import { findHoodsOver } from '../support/hoods';
import { machineName } from '../support/names';
import { placeHood } from '../support/placeHood';
import { areaPlace } from '../support/places';
import { sentence } from '../support/words';
import type { Check, Measurement, Repair } from '../types';

export const check: Check = {
  id: 'hood-where-needed',
  title: 'A hood where one is needed',
  group: 'air',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'International Mechanical Code',
    section: '507.3: a Type II hood above dishwashers, except where heat and moisture go another way',
    confidence: 'secondary',
  },
  why: 'A machine that gives its vapour to the room needs a hood over it. One with its own run or with heat recovery needs none, and the money is spent for nothing.',
  measure: (scene) =>
    scene.machines.map((machine) =>
      machine.sheet.vent.kind === 'hood' ? measureNeeded(scene, machine) : measureNotNeeded(scene, machine),
    ),
};

function measureNeeded(scene: Scene, machine: PlacedMachine): Measurement {
  const hood = findHoodsOver(scene, machine)[0]?.hood;
  const name = machineName(scene, machine);
  return {
    ...about(machine, hood),
    value: hood !== undefined,
    limit: true,
    say: () =>
      hood === undefined
        ? sentence(`${name} gives its vapour to the room and has no hood over it. Hang one, larger than the machine.`)
        : sentence(`${hoodName(scene, hood)} hangs over ${name}.`),
    repairs: () => (hood === undefined ? placeHood(scene, machine) : []),
  };
}

/** Heat recovery and direct vent: a hood harms nothing, so it is only a watch. */
function measureNotNeeded(scene: Scene, machine: PlacedMachine): Measurement {
  const hood = findHoodsOver(scene, machine)[0]?.hood;
  const name = machineName(scene, machine);
  const reason = machine.sheet.vent.kind === 'recovery' ? 'recovers its heat' : 'has its own run to the open air';
  return {
    ...about(machine, hood),
    value: hood !== undefined,
    limit: false,
    severity: 'watch',
    source: { kind: 'common-practice', text: 'A heat-recovery machine needs no hood; a direct-vent machine has its own fan and run.' },
    say: () =>
      hood === undefined
        ? sentence(`${name} ${reason} and needs no hood; none hangs over it.`)
        : sentence(
            `${hoodName(scene, hood)} hangs over ${name}, which ${reason} and needs none. Leave it out unless the local official wants it.`,
          ),
    repairs: () => (hood === undefined ? [] : takeAway(scene, hood)),
  };
}

/** Only a hood that serves no other machine. */
function takeAway(scene: Scene, placed: PlacedHood): Repair[] {
  if (placed.covers.length > 1) return [];
  const name = hoodName(scene, placed);
  return [
    {
      id: 'take-hood-away',
      label: () => `Take ${name} away`,
      edit: (draft) => {
        draft.hoods = draft.hoods.filter((item) => item.id !== placed.hood.id);
      },
    },
  ];
}

const about = (machine: PlacedMachine, hood: PlacedHood | undefined) => ({
  subjects: [machine.machine.id],
  place: areaPlace(hood?.polygon ?? machine.footprint),
});
