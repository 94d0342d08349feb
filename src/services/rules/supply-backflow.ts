import { type Check, connectionPlace, type Measurement, machineName, sentence } from '../../checks';
import { type Appliance, appliancePath, type Scene } from '../../scene';
import type { Formatter } from '../../units';
import { readingsFor } from '../support/machines';

export const check: Check = {
  id: 'supply-backflow',
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
  measure: (scene) => scene.appliances.map((placed) => measureMachine(scene, placed)),
};

function measureMachine(scene: Scene, placed: Appliance): Measurement {
  const { backflow } = placed.machine.hookUp;
  const inlet = placed.sheet.connections.find(({ kind }) => kind.endsWith('-water'));
  const name = machineName(scene, placed);
  const about = { subjects: [placed.machine.id], place: connectionPlace(placed, inlet?.kind ?? 'hot-water'), limit: true };
  if (backflow === null) {
    const ask = { input: 'device that keeps its water out of the building’s', path: appliancePath(placed, 'hookUp', 'backflow') };
    return {
      ...about,
      value: null,
      ask,
      say: () => `Say what keeps the water of ${name} out of the building’s: an air gap or a preventer.`,
    };
  }
  return { ...about, value: backflow !== 'none', say: (f) => sentence(SAY[backflow](name, f, gapsOf(scene, placed))) };
}

/** Air gaps that its water connections need, in metres. */
const gapsOf = (scene: Scene, placed: Appliance): number[] =>
  readingsFor(scene, 'supply-air-gap', placed).flatMap(({ value }) => (value === null ? [] : [value]));

type Saying = (name: string, f: Formatter, gapsM: readonly number[]) => string;

const SAY: Readonly<Record<NonNullable<Appliance['machine']['hookUp']['backflow']>, Saying>> = {
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
