import { type Check, connectionPlace, editHookUp, type Measurement, machineName, type Repair, sentence } from '../../../rules';
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
  { part: 'vent', kind: 'vent-signal', field: 'ventSignal', name: 'vent signal', motor: 'a fan' },
  { part: 'rinse-aid', kind: 'rinse-aid-signal', field: 'rinseAidSignal', name: 'rinse-aid signal', motor: 'a pump' },
  { part: 'detergent', kind: 'detergent-signal', field: 'detergentSignal', name: 'detergent signal', motor: 'a pump' },
] as const;

/** Only signals that the data sheet has. */
function measureSignal(scene: Scene, placed: PlacedMachine, { part, kind, field, name, motor }: (typeof SIGNALS)[number]): Measurement[] {
  if (!placed.sheet.connections.some((one) => one.kind === kind)) return [];
  const { machine } = placed;
  const driven = machine.hookUp[field];
  const common = { part, subjects: [machine.id], place: connectionPlace(placed, kind), limit: true };
  const of = `the ${name} of ${machineName(scene, placed)}`;
  if (driven === null) {
    const ask = { input: `device that the ${name} drives`, path: machinePath(placed, 'hookUp', field) };
    return [{ value: null, ask, say: () => `Say what ${of} drives: a contactor, a motor or nothing.`, ...common }];
  }
  const isFit = driven !== 'motor';
  const fitWords = driven === 'nothing' ? `${of} drives nothing.` : `${of} drives a contactor.`;
  return [
    {
      value: isFit,
      say: () =>
        sentence(
          isFit
            ? fitWords
            : `${of} drives ${motor} directly; it can carry a coil alone. Have a licensed electrician set a contactor between.`,
        ),
      repairs: () => (isFit ? [] : [setContactor(machine.id, field)]),
      ...common,
    },
  ];
}

const setContactor = (id: string, field: (typeof SIGNALS)[number]['field']): Repair => ({
  id: 'set-contactor',
  label: () => 'Set a contactor between',
  edit: (draft) => editHookUp(draft, id, { [field]: 'contactor' }),
});
