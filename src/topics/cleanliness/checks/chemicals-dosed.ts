import { type Check, createMessages, type Measurement, machinePlace, type Name, nameMachine } from '../../../rules';
import type { PlacedMachine, Scene } from '../../../scene';

export const check: Check = {
  id: 'chemicals-dosed',
  order: 860,
  title: 'Detergent and sanitiser are dosed by the machine',
  group: 'sanitary',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'FDA Food Code',
    section: '4-204.117: given automatically, to be seen or with an alarm, as WAC 246-215-04258',
    confidence: 'read',
  },
  why: 'Who doses by hand forgets, most of all in the rush; without detergent or sanitiser plates only look clean. A window, or an alarm, tells when a can is empty. Chemicals burn skin and eyes: goggles and gloves where cans are changed, and never two of them together. A test kit on the site tells how strong a sanitiser is (NY 14-1.115; 15A NCAC 18A .3313): the last rinse is sampled and held against the data plate.',
  measure: (scene) => scene.machines.map((placed) => measureMachine(scene, placed)),
};

/** What is said of what the machine gives itself. */
export interface ChemicalsDosedMessages {
  'chemicals-dosed/calls': Dosed;
  'chemicals-dosed/no-signal': Dosed;
}

interface Dosed {
  machine: Name;
  chemicals: 'detergent' | 'detergent-and-sanitizer';
}

const say = createMessages<ChemicalsDosedMessages>();

/**
 * The data sheet says whether the machine calls for detergent; how its pumps tell of an empty can, and how a sanitiser comes, only
 * the machine itself does. So it is never more than a watch, and what is left to see is said.
 */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement {
  const { machine, sheet } = placed;
  const calls = sheet.connections.some(({ kind }) => kind === 'detergent-signal');
  const dosed: Dosed = {
    machine: nameMachine(scene, placed),
    chemicals: sheet.sanitizing === 'chemical' ? 'detergent-and-sanitizer' : 'detergent',
  };
  return {
    subjects: [machine.id],
    place: machinePlace(placed),
    value: calls,
    limit: true,
    severity: 'watch',
    message: say(calls ? 'chemicals-dosed/calls' : 'chemicals-dosed/no-signal', dosed),
  };
}
