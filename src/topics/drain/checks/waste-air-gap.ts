import {
  type Check,
  connectionPlace,
  createMessages,
  editHookUp,
  type FigureReading,
  holdAgainst,
  type Measurement,
  type Name,
  type NoParams,
  nameMachine,
  type Offer,
  type Repair,
  readingsFor,
} from '../../../rules';
import { machinePath, type PlacedMachine, type Scene } from '../../../scene';
import { WASTE_INPUT } from '../figures/support/drains';
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

/** What is said of the gap; lengths in mm. */
export interface WasteAirGapMessages {
  'waste-air-gap/ask-gap': NoParams;
  'waste-air-gap/what': NoParams;
  'waste-air-gap/enough': Gap;
  'waste-air-gap/too-little': Gap & { missing: number };
  'waste-air-gap/not-known': { machine: Name };
  'waste-air-gap/repair-widen-air-gap': { least: number };
}

interface Gap {
  machine: Name;
  gap: number;
  least: number;
}

const message = createMessages<WasteAirGapMessages>();

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
    input: message('waste-air-gap/ask-gap'),
    path: machinePath(placed, 'hookUp', 'airGap'),
  };
  return holdAgainst(said, reading, {
    place: connectionPlace(placed, 'drain'),
    what: message('waste-air-gap/what'),
    message: (gap, least) => {
      const common = { machine: nameMachine(scene, placed), gap: gap * 1000, least: least * 1000 };
      return gap < least - ROUNDING
        ? message('waste-air-gap/too-little', { ...common, missing: (least - gap) * 1000 })
        : message('waste-air-gap/enough', common);
    },
    ...offerGap(placed, airGap, reading.value),
    ...(reading.part === undefined ? {} : { part: reading.part }),
  });
}

const ROUNDING = 1e-9;

function askWaste(scene: Scene, placed: PlacedMachine): Measurement {
  const ask = { input: WASTE_INPUT, path: machinePath(placed, 'hookUp', 'waste') };
  return {
    subjects: [placed.machine.id],
    place: connectionPlace(placed, 'drain'),
    value: null,
    limit: null,
    ask,
    message: message('waste-air-gap/not-known', { machine: nameMachine(scene, placed) }),
  };
}

function offerGap(placed: PlacedMachine, airGap: number | null, leastM: number | null): { repairs?: Offer } {
  if (airGap === null || leastM === null || airGap >= leastM * 1000 - ROUNDING) return {};
  return { repairs: { ids: ['widen-air-gap'], find: () => [widenGap(placed, leastM * 1000)] } };
}

/** Leaving the gap that is needed. */
const widenGap = ({ machine }: PlacedMachine, least: number): Repair => ({
  id: 'widen-air-gap',
  label: message('waste-air-gap/repair-widen-air-gap', { least }),
  edit: (draft) => editHookUp(draft, machine.id, { airGap: least }),
});
