import { needsHood } from '../../../catalog';
import {
  areaPlace,
  type Check,
  createMessages,
  type Measurement,
  type Name,
  type NoParams,
  nameHood,
  nameMachine,
  type Repair,
  type Source,
} from '../../../rules';
import { dataSheetPath, type PlacedHood, type PlacedMachine, type Scene } from '../../../scene';
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

/** What is said of a machine and the hood over it. */
export interface HoodWhereNeededMessages {
  'hood-where-needed/hangs': { hood: Name; machine: Name };
  /** `mayWaive`: whether it is still open that the room takes the vapour. */
  'hood-where-needed/missing': { machine: Name; vapour: 'not-listed' | 'to-room'; mayWaive: boolean };
  'hood-where-needed/waived': { machine: Name };
  'hood-where-needed/listing-not-known': { machine: Name };
  'hood-where-needed/ask-listing': NoParams;
  'hood-where-needed/not-needed': { machine: Name; vapour: 'condensed' | 'own-run' };
  'hood-where-needed/needless': { hood: Name; machine: Name; vapour: 'condensed' | 'own-run' };
  'hood-where-needed/repair-take-hood-away': { hood: Name };
}

const say = createMessages<HoodWhereNeededMessages>();

function measureMachine(scene: Scene, machine: PlacedMachine): Measurement {
  const isNeeded = needsHood(machine.sheet);
  if (isNeeded === false) return measureNotNeeded(scene, machine);
  const hood = findHoodsOver(scene, machine)[0]?.hood;
  if (hood === undefined && scene.plan.air.hoodWaived === true) return waived(scene, machine);
  return isNeeded === null ? askListing(scene, machine, hood) : measureNeeded(scene, machine, hood);
}

function measureNeeded(scene: Scene, machine: PlacedMachine, hood: PlacedHood | undefined): Measurement {
  const name = nameMachine(scene, machine);
  const vapour = machine.sheet.vent.kind === 'recovery' ? 'not-listed' : 'to-room';
  const mayWaive = scene.plan.air.hoodWaived === null;
  return {
    value: hood !== undefined,
    limit: true,
    message:
      hood === undefined
        ? say('hood-where-needed/missing', { machine: name, vapour, mayWaive })
        : say('hood-where-needed/hangs', { hood: nameHood(scene, hood), machine: name }),
    ...(hood === undefined ? { repairs: { ids: ['place-hood'], find: () => placeHood(scene, machine) } } : {}),
    ...about(machine, hood),
  };
}

/** The plan says that the room takes heat and moisture: no fault by itself, since the exhaust of the room is then judged. */
const waived = (scene: Scene, machine: PlacedMachine): Measurement => ({
  value: true,
  limit: true,
  message: say('hood-where-needed/waived', { machine: nameMachine(scene, machine) }),
  ...about(machine, undefined),
});

function askListing(scene: Scene, machine: PlacedMachine, hood: PlacedHood | undefined): Measurement {
  const input = say('hood-where-needed/ask-listing');
  return {
    value: null,
    limit: true,
    ask: { input, path: dataSheetPath(scene, machine, 'vent', 'listedCondensing') },
    source: LISTED,
    message: say('hood-where-needed/listing-not-known', { machine: nameMachine(scene, machine) }),
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
  const condenses = machine.sheet.vent.kind === 'recovery';
  const bare = { machine: nameMachine(scene, machine), vapour: condenses ? 'condensed' : 'own-run' } as const;
  return {
    value: hood !== undefined,
    limit: false,
    severity: 'watch',
    source: condenses ? LISTED : { kind: 'common-practice', text: 'A direct-vent machine has its own fan and run.' },
    message:
      hood === undefined
        ? say('hood-where-needed/not-needed', bare)
        : say('hood-where-needed/needless', { hood: nameHood(scene, hood), ...bare }),
    ...(hood === undefined ? {} : { repairs: { ids: ['take-hood-away'], find: () => takeAway(scene, hood) } }),
    ...about(machine, hood),
  };
}

/** Only a hood that serves no other machine. */
function takeAway(scene: Scene, placed: PlacedHood): Repair[] {
  if (placed.covers.length > 1) return [];
  return [
    {
      id: 'take-hood-away',
      label: say('hood-where-needed/repair-take-hood-away', { hood: nameHood(scene, placed) }),
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
