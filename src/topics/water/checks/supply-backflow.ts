import {
  type Check,
  connectionPlace,
  createMessages,
  isUnder,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameMachine,
  readingsFor,
  type Source,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { MM_PER_INCH } from '../../../units';
import { rule as supplyAirGapFigure } from '../figures/supply-air-gap';

export const check: Check = {
  id: 'supply-backflow',
  order: 310,
  title: 'The machine’s water can’t run back',
  group: 'water',
  unit: 'yes-no',
  relation: 'equals',
  source: {
    kind: 'published',
    document: 'Chicago Plumbing Code',
    section: '0-0-0-2691058: a commercial dish machine has an integral air gap or a backflow preventer',
    confidence: 'read',
  },
  why: 'When the pressure in the street falls, a pipe that reaches into soiled water sucks it into what people drink. Local code says which preventer, and who tests it; a licensed plumber fits it.',
  measure: (scene) => scene.machines.flatMap((placed) => [measureDevice(scene, placed), ...measureGap(scene, placed)]),
};

/** What is said of what keeps the water apart; lengths in mm. */
export interface SupplyBackflowMessages {
  'supply-backflow/ask-device': NoParams;
  'supply-backflow/not-known': { machine: Name };
  'supply-backflow/air-gap': { machine: Name };
  'supply-backflow/air-gap-needs': { machine: Name; least: number };
  'supply-backflow/preventer': { machine: Name };
  'supply-backflow/none': { machine: Name };
  'supply-backflow/gap': Gap & { needed: number };
  'supply-backflow/gap-below-least': Gap & { least: number };
  'supply-backflow/gap-for-narrow-outlet': Gap & { needed: number };
}

interface Gap {
  machine: Name;
  gap: number;
}

const message = createMessages<SupplyBackflowMessages>();

function aboutOf(placed: PlacedMachine): Pick<Measurement, 'subjects' | 'place'> {
  const inlet = placed.sheet.connections.find(({ kind }) => kind.endsWith('-water'));
  return { subjects: [placed.machine.id], place: connectionPlace(placed, inlet?.kind ?? 'hot-water') };
}

function measureDevice(scene: Scene, placed: PlacedMachine): Measurement {
  const { backflow, supplyGap } = placed.machine.hookUp;
  const machine = nameMachine(scene, placed);
  const about = { limit: true, ...aboutOf(placed) };
  if (backflow === null) {
    const ask = { input: message('supply-backflow/ask-device'), path: machinePath(placed, 'hookUp', 'backflow') };
    return { value: null, ask, message: message('supply-backflow/not-known', { machine }), ...about };
  }
  const needed = supplyGap === null ? gapsOf(scene, placed) : [];
  return { value: backflow !== 'none', message: messageOf(machine, backflow, needed), ...about };
}

/** Air gaps that its water connections need, in metres. */
const gapsOf = (scene: Scene, placed: PlacedMachine): number[] =>
  readingsFor(supplyAirGapFigure, scene, placed).flatMap(({ value }) => (value === null ? [] : [value]));

type Device = NonNullable<PlacedMachine['machine']['hookUp']['backflow']>;

function messageOf(machine: Name, device: Device, gapsM: readonly number[]): Message {
  return device === 'air-gap' && gapsM.length > 0
    ? message('supply-backflow/air-gap-needs', { machine, least: Math.max(...gapsM) * 1000 })
    : message(`supply-backflow/${device}`, { machine });
}

/** An inch, however narrow the outlet. */
const LEAST = MM_PER_INCH;

const AIR_GAP: Source = {
  kind: 'published',
  document: 'FDA Food Code',
  section: '5-202.13, as DC 25-B1405: twice the inlet and at least 1 in',
  confidence: 'read',
};

/** Made in the factory and listed with the machine, it is not asked for. Less than an inch is never enough; more may be, of a narrow outlet. */
function measureGap(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { backflow, supplyGap } = placed.machine.hookUp;
  if (backflow !== 'air-gap' || supplyGap === null) return [];
  const needed = Math.max(LEAST, ...gapsOf(scene, placed).map((gap) => gap * 1000));
  return [
    {
      part: 'gap',
      value: supplyGap,
      limit: LEAST,
      watchLimit: needed,
      unit: 'mm',
      relation: 'at-least',
      source: AIR_GAP,
      message: messageOfGap({ machine: nameMachine(scene, placed), gap: supplyGap }, needed),
      ...aboutOf(placed),
    },
  ];
}

function messageOfGap(of: Gap, needed: number): Message {
  if (isUnder(of.gap, LEAST)) return message('supply-backflow/gap-below-least', { ...of, least: LEAST });
  return message(isUnder(of.gap, needed) ? 'supply-backflow/gap-for-narrow-outlet' : 'supply-backflow/gap', { ...of, needed });
}
