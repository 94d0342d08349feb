import { needsHood } from '../../../catalog';
import { areaPlace, type Check, hoodName, type Measurement, machineName, type Repair, type Source, sentence } from '../../../rules';
import { type PlacedHood, type PlacedMachine, type Scene, sheetPath } from '../../../scene';
import { findHoodsOver } from './support/hoods';
import { placeHood } from './support/placeHood';

export const check: Check = {
  id: 'hood-where-needed',
  order: 200,
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
  why: 'A machine that gives its vapour to the room needs a hood over it, or ventilation of the room that is designed for its heat and moisture. One with its own run needs none, nor one that condenses its own vapour and is listed for that: there the money is spent for nothing. The local official decides.',
  measure: (scene) => scene.machines.map((machine) => measureMachine(scene, machine)),
};

function measureMachine(scene: Scene, machine: PlacedMachine): Measurement {
  const isNeeded = needsHood(machine.sheet);
  if (isNeeded === false) return measureNotNeeded(scene, machine);
  const hood = findHoodsOver(scene, machine)[0]?.hood;
  if (hood === undefined && scene.plan.air.hoodWaived === true) return waived(scene, machine);
  return isNeeded === null ? askListing(scene, machine, hood) : measureNeeded(scene, machine, hood);
}

function measureNeeded(scene: Scene, machine: PlacedMachine, hood: PlacedHood | undefined): Measurement {
  const name = machineName(scene, machine);
  const gives =
    machine.sheet.vent.kind === 'recovery' ? 'wins back its heat but is not listed as condensing' : 'gives its vapour to the room';
  const waive =
    scene.plan.air.hoodWaived === null ? ', or say in the plan that the room’s ventilation is designed for its heat and moisture' : '';
  return {
    value: hood !== undefined,
    limit: true,
    say: () =>
      hood === undefined
        ? sentence(`${name} ${gives} and has no hood over it. Hang one, larger than the machine${waive}.`)
        : sentence(`${hoodName(scene, hood)} hangs over ${name}.`),
    repairs: () => (hood === undefined ? placeHood(scene, machine) : []),
    ...about(machine, hood),
  };
}

/** The plan says that the room takes heat and moisture: no fault by itself, since the exhaust of the room is then judged. */
function waived(scene: Scene, machine: PlacedMachine): Measurement {
  const name = machineName(scene, machine);
  return {
    value: true,
    limit: true,
    say: () =>
      sentence(
        `${name} has no hood over it: the plan says that the room’s ventilation takes its heat and moisture. The exhaust of the room is judged for that.`,
      ),
    ...about(machine, undefined),
  };
}

function askListing(scene: Scene, machine: PlacedMachine, hood: PlacedHood | undefined): Measurement {
  const name = machineName(scene, machine);
  const input = 'listing of the machine as condensing (electric, to UL 921)';
  return {
    value: null,
    limit: true,
    ask: { input, path: sheetPath(scene, machine, 'vent', 'listedCondensing') },
    source: LISTED,
    say: () => sentence(`${name} wins back its heat. Is it electric and listed to UL 921 as condensing? Else it needs a hood.`),
    ...about(machine, hood),
  };
}

const LISTED: Source = {
  kind: 'published',
  document: 'International Mechanical Code',
  section: '507.1, exceptions: no hood over electric dishwashers listed to UL 921 with condensing of their own',
  confidence: 'secondary',
};

/** Listed as condensing, or with a run of its own: a hood harms nothing, so it is only a watch. */
function measureNotNeeded(scene: Scene, machine: PlacedMachine): Measurement {
  const hood = findHoodsOver(scene, machine)[0]?.hood;
  const name = machineName(scene, machine);
  const condenses = machine.sheet.vent.kind === 'recovery';
  const reason = condenses ? 'is listed as condensing its own vapour' : 'is made to vent through a run of its own';
  return {
    value: hood !== undefined,
    limit: false,
    severity: 'watch',
    source: condenses ? LISTED : { kind: 'common-practice', text: 'A direct-vent machine has its own fan and run.' },
    say: () =>
      hood === undefined
        ? sentence(`${name} ${reason} and needs no hood; none hangs over it.`)
        : sentence(
            `${hoodName(scene, hood)} hangs over ${name}, which ${reason} and needs none. Leave it out unless the local official wants it.`,
          ),
    repairs: () => (hood === undefined ? [] : takeAway(scene, hood)),
    ...about(machine, hood),
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
