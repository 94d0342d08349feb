import {
  type Check,
  connectionPlace,
  createMessages,
  editHookUp,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  type Repair,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';

export const check: Check = {
  id: 'signals-drive-contactors',
  order: 680,
  title: 'Signals drive contactors, never motors',
  group: 'power',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'common-practice',
    text: 'The 120 V signals for vent, rinse aid and detergent drive the coil of a contactor or relay, never a fan or a pump direct.',
  },
  why: 'A signal feeds a coil and no more. A motor on it burns the machine’s own control, and its wires can shock or start a fire. A licensed electrician wires it; the plate inside the control compartment governs.',
  measure: (scene) => scene.machines.flatMap((placed) => SIGNALS.flatMap((signal) => measureSignal(scene, placed, signal))),
};

const SIGNALS = [
  { part: 'vent', kind: 'vent-signal', field: 'ventSignal' },
  { part: 'rinse-aid', kind: 'rinse-aid-signal', field: 'rinseAidSignal' },
  { part: 'detergent', kind: 'detergent-signal', field: 'detergentSignal' },
] as const;

/** Which signal is spoken of, and of which machine. */
interface Spoken {
  signal: SignalPart;
  machine: Name;
}

type SignalPart = (typeof SIGNALS)[number]['part'];

/** What is said of a signal. */
export interface SignalsDriveContactorsMessages {
  'signals-drive-contactors/ask-driven': { signal: SignalPart };
  'signals-drive-contactors/unknown': Spoken;
  'signals-drive-contactors/fit': Spoken & { drives: 'contactor' | 'nothing' };
  'signals-drive-contactors/motor': Spoken;
  'signals-drive-contactors/repair-set-contactor': NoParams;
}

const say = createMessages<SignalsDriveContactorsMessages>();

/** Only signals that the data sheet has. */
function measureSignal(scene: Scene, placed: PlacedMachine, { part, kind, field }: (typeof SIGNALS)[number]): Measurement[] {
  if (!placed.sheet.connections.some((one) => one.kind === kind)) return [];
  const { machine } = placed;
  const driven = machine.hookUp[field];
  const common = { part, subjects: [machine.id], place: connectionPlace(placed, kind), limit: true };
  const spoken = { signal: part, machine: nameMachine(scene, placed) };
  if (driven === null) {
    const ask = { input: say('signals-drive-contactors/ask-driven', { signal: part }), path: machinePath(placed, 'hookUp', field) };
    return [{ value: null, ask, message: say('signals-drive-contactors/unknown', spoken), ...common }];
  }
  if (driven !== 'motor') return [{ value: true, message: say('signals-drive-contactors/fit', { ...spoken, drives: driven }), ...common }];
  return [
    {
      value: false,
      message: say('signals-drive-contactors/motor', spoken),
      repairs: { ids: ['set-contactor'], find: () => [setContactor(machine.id, field)] },
      ...common,
    },
  ];
}

const setContactor = (id: string, field: (typeof SIGNALS)[number]['field']): Repair => ({
  id: 'set-contactor',
  label: say('signals-drive-contactors/repair-set-contactor'),
  edit: (draft) => editHookUp(draft, id, { [field]: 'contactor' }),
});
