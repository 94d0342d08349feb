import { type Check, connectionPlace, isUnder, type Measurement, machineName, readingsFor, type Source, sentence } from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { type Formatter, MM_PER_INCH } from '../../../units';
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

function aboutOf(placed: PlacedMachine): Pick<Measurement, 'subjects' | 'place'> {
  const inlet = placed.sheet.connections.find(({ kind }) => kind.endsWith('-water'));
  return { subjects: [placed.machine.id], place: connectionPlace(placed, inlet?.kind ?? 'hot-water') };
}

function measureDevice(scene: Scene, placed: PlacedMachine): Measurement {
  const { backflow, supplyGap } = placed.machine.hookUp;
  const name = machineName(scene, placed);
  const about = { limit: true, ...aboutOf(placed) };
  if (backflow === null) {
    const ask = { input: 'device that keeps its water out of the building’s', path: machinePath(placed, 'hookUp', 'backflow') };
    return {
      value: null,
      ask,
      say: () => `Say what keeps the water of ${name} out of the building’s: an air gap or a preventer.`,
      ...about,
    };
  }
  const needed = supplyGap === null ? gapsOf(scene, placed) : [];
  return { value: backflow !== 'none', say: (f) => sentence(SAY[backflow](name, f, needed)), ...about };
}

/** Air gaps that its water connections need, in metres. */
const gapsOf = (scene: Scene, placed: PlacedMachine): number[] =>
  readingsFor(supplyAirGapFigure, scene, placed).flatMap(({ value }) => (value === null ? [] : [value]));

type Saying = (name: string, f: Formatter, gapsM: readonly number[]) => string;

const SAY: Readonly<Record<NonNullable<PlacedMachine['machine']['hookUp']['backflow']>, Saying>> = {
  'air-gap': (name, f, gapsM) => {
    const keeps = `an air gap keeps the water of ${name} out of the building’s`;
    return gapsM.length === 0
      ? `${keeps}.`
      : `${keeps}; over the rim where it would flood and away from walls it needs ${f.length(Math.max(...gapsM) * 1000)} at least.`;
  },
  preventer: (name) => `a backflow preventer keeps the water of ${name} out of the building’s. Have it tested as local code says.`,
  none: (name) =>
    `nothing keeps the water of ${name} out of the building’s. It needs an air gap of its own or a backflow preventer, fitted by a licensed plumber.`,
};

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
      say: (f) => {
        const ends = `the water of ${machineName(scene, placed)} comes out ${f.length(supplyGap)} above the rim where it would flood`;
        if (isUnder(supplyGap, LEAST))
          return sentence(`${ends}; never is less than ${f.length(LEAST)} enough. Have a licensed plumber see to it.`);
        return isUnder(supplyGap, needed)
          ? sentence(
              `${ends}; an outlet as wide as its pipe needs ${f.length(needed)}. See how wide the outlet is: a narrower one needs less.`,
            )
          : sentence(`${ends}; ${f.length(needed)} is needed.`);
      },
      ...aboutOf(placed),
    },
  ];
}
