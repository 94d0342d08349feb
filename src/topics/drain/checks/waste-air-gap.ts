import {
  type Check,
  connectionPlace,
  editHookUp,
  type FigureReading,
  holdAgainst,
  type Measurement,
  machineName,
  type Repair,
  readingsFor,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { rule as wasteAirGapFigure } from '../figures/waste-air-gap';

export const check: Check = {
  id: 'waste-air-gap',
  order: 600,
  title: 'Air gap below the waste pipe',
  group: 'drain',
  unit: 'm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'Chicago Plumbing Code and UFC 4-722-01',
    section: 'indirect waste: twice the waste pipe; the least of an inch from FDA Food Code 5-202.13',
    confidence: 'read',
  },
  why: 'Through an air gap sewage that backs up runs over the floor sink and never into the machine. Local code decides where a direct connection may take its place.',
  measure: (scene) => scene.machines.flatMap((placed) => measureMachine(scene, placed)),
};

/** While it is not known how the waste is connected, that is asked for; a direct connection has no air gap. */
function measureMachine(scene: Scene, placed: PlacedMachine): Measurement[] {
  const { waste } = placed.machine.hookUp;
  if (waste === 'direct') return [];
  if (waste === null) return [askWaste(scene, placed)];
  return readingsFor(wasteAirGapFigure, scene, placed).map((reading) => measureGap(scene, placed, reading));
}

function measureGap(scene: Scene, placed: PlacedMachine, reading: FigureReading): Measurement {
  const { airGap } = placed.machine.hookUp;
  const said = {
    value: airGap === null ? null : airGap / 1000,
    input: 'air gap from the end of the waste pipe to the rim of the floor sink',
    path: machinePath(placed, 'hookUp', 'airGap'),
  };
  return holdAgainst(said, reading, {
    place: connectionPlace(placed, 'drain'),
    name: 'the least air gap',
    say: (gap, least, f) => {
      const stands = `The waste of ${machineName(scene, placed)} ends ${f.length(gap * 1000)} above the rim; the air gap must be ${f.length(least * 1000)}`;
      return gap < least - ROUNDING ? `${stands}. Cut the pipe ${f.length((least - gap) * 1000)} shorter.` : `${stands}.`;
    },
    repairs: () => widenGap(placed, airGap, reading.value),
    ...(reading.part === undefined ? {} : { part: reading.part }),
  });
}

const ROUNDING = 1e-9;

function askWaste(scene: Scene, placed: PlacedMachine): Measurement {
  const ask = { input: 'way in which the waste is connected', path: machinePath(placed, 'hookUp', 'waste') };
  return {
    subjects: [placed.machine.id],
    place: connectionPlace(placed, 'drain'),
    value: null,
    limit: null,
    ask,
    say: () => `Say whether the waste of ${machineName(scene, placed)} runs over an air gap or is connected directly.`,
  };
}

/** Leaving the gap that is needed. */
function widenGap({ machine }: PlacedMachine, airGap: number | null, leastM: number | null): Repair[] {
  if (airGap === null || leastM === null || airGap >= leastM * 1000 - ROUNDING) return [];
  return [
    {
      id: 'widen-air-gap',
      label: (f) => `Leave an air gap of ${f.length(leastM * 1000)}`,
      edit: (draft) => editHookUp(draft, machine.id, { airGap: leastM * 1000 }),
    },
  ];
}
