import {
  type Check,
  connectionPlace,
  createRefusal,
  holdAgainst,
  lengthOf,
  type Measurement,
  machineName,
  pointPlace,
  type Said,
  type Source,
  sentence,
} from '../../../rules';
import { machinePath, type PlacedMachine, type PlacedRoom, type Scene } from '../../../scene';
import { UNDERGROUND_BRANCH_SIZE } from '../formulas/leastBranch';
import { nominalSize } from '../formulas/nominalSize';
import { dishMachineRow, findFixtureValue } from '../formulas/support/fixtureTable';

export const check: Check = {
  id: 'drain-size',
  order: 570,
  title: 'The drains are wide enough, and trapped',
  group: 'drain',
  unit: 'mm',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'Chicago Plumbing Code',
    section:
      '0-0-0-2692176: an underground branch from a floor drain is 2 in at least; IPC 709.1 and the UPC, as restated, give any floor drain a trap of 2 in',
    confidence: 'read',
  },
  why: 'What a machine lets out carries food and grease. A pipe that is narrower than what feeds it stops up where nobody gets at it, and through a drain without a trap the sewer breathes into the room. Local code and a plumber decide.',
  measure: (scene) =>
    scene.machines.length === 0
      ? []
      : [
          ...scene.room.floorDrains.flatMap((placed, index) => [measureBranch(placed, index), ...measureUntrapped(scene, placed)]),
          ...scene.machines.flatMap((placed) => [...measureOutlet(scene, placed), measureByTank(scene, placed)]),
        ],
};

/**
 * The pipe below each floor drain, by its nominal size. Whether it lies under ground the plan does not say; the trap that other codes
 * give a floor drain is as wide, so that the bound is the same on any floor.
 */
function measureBranch({ drain, centre }: PlacedRoom['floorDrains'][number], index: number): Measurement {
  const said = saidOf(drain.waste.bore, 'inside diameter of the floor drain’s pipe', ['room', 'floorDrains', index, 'waste', 'bore']);
  return holdAgainst(
    said,
    { subjects: [drain.id], value: lengthOf(UNDERGROUND_BRANCH_SIZE) },
    {
      part: 'branch',
      place: pointPlace(centre),
      name: 'the least size of a floor drain’s pipe',
      say: (size, least, f) => {
        const needs = `The pipe of the floor drain is ${f.length(size)}; ${f.length(least)} is the least under ground, and the least trap that codes give a floor drain on any floor`;
        return size < least - ROUNDING ? `${needs}. Have a larger one laid.` : `${needs}.`;
      },
    },
  );
}

/** A floor drain that is said to have no trap. Where a machine is connected directly its own check asks for the trap, and speaks. */
const measureUntrapped = ({ machines }: Scene, { drain, centre }: PlacedRoom['floorDrains'][number]): Measurement[] =>
  drain.waste.trapped !== false || machines.some(({ machine }) => machine.hookUp.waste === 'direct')
    ? []
    : [
        {
          part: 'trap',
          subjects: [drain.id],
          place: pointPlace(centre),
          value: false,
          limit: true,
          unit: 'yes-no',
          relation: 'equals',
          source: TRAPS,
          say: () =>
            'The floor drain has no trap, and the air of the sewer comes into the room. Have a plumber set one below it, and keep it filled.',
        },
      ];

const TRAPS: Source = {
  kind: 'published',
  document: 'International and Uniform Plumbing Code',
  section: '709.1 and the fixture table, as restated: a floor drain has a trap, of 2 in at least',
  confidence: 'secondary',
};

/** The machine's own waste pipe, no narrower than the widest of its outlets. A data sheet that gives them no size says nothing. */
function measureOutlet(scene: Scene, placed: PlacedMachine): Measurement[] {
  const outlet = Math.max(0, ...placed.sheet.connections.map(({ kind, size }) => (kind === 'drain' ? size : 0)));
  if (outlet === 0) return [];
  return [
    holdAgainst(
      wastePipe(placed),
      { subjects: [placed.machine.id], value: nominal(outlet) },
      {
        part: 'outlet',
        place: connectionPlace(placed, 'drain'),
        source: { kind: 'data-sheet', text: 'Size of the machine’s drain connection: a waste pipe is not narrowed on its way.' },
        name: 'the machine’s outlet',
        say: (size, least, f) => {
          const holds = `The waste pipe of ${machineName(scene, placed)} is ${f.length(size)}, its outlet ${f.length(least)}`;
          return sentence(size < least - ROUNDING ? `${holds}. Take a pipe as wide as the outlet.` : `${holds}.`);
        },
      },
    ),
  ];
}

/** By what its tank holds, in a code that is old: never more than a watch. */
function measureByTank(scene: Scene, placed: PlacedMachine): Measurement {
  const row = dishMachineRow(placed.sheet.tank?.volume ?? 0);
  const trapM = row === null ? null : (findFixtureValue('municipal-old', row)?.trapM ?? null);
  const least =
    trapM === null ? { value: null, refusal: createRefusal(check, 'tank-not-held', { mostGallons: 100 }) } : { value: trapM * 1000 };
  return holdAgainst(
    wastePipe(placed),
    { subjects: [placed.machine.id], ...least },
    {
      part: 'tank',
      place: connectionPlace(placed, 'drain'),
      severity: 'watch',
      source: {
        kind: 'published',
        document: 'A municipal plumbing code of about 1965',
        section: 'fixture table: restaurant dish machines to 30 gal 2 in, to 100 gal 3 in',
        confidence: 'read',
      },
      name: 'the least waste for its tank',
      say: (size, must, f) => {
        const holds = `The waste pipe of ${machineName(scene, placed)} is ${f.length(size)}; for its tank an old city code wants ${f.length(must)}`;
        return sentence(size < must - ROUNDING ? `${holds}. Ask the local authority.` : `${holds}.`);
      },
    },
  );
}

const ROUNDING = 1e-6;

const wastePipe = (placed: PlacedMachine): Said =>
  saidOf(placed.machine.hookUp.drainBore, 'inside diameter of its waste pipe', machinePath(placed, 'hookUp', 'drainBore'));

const saidOf = (bore: number | null, input: string, path: Said['path']): Said => ({
  value: bore === null ? null : nominal(bore),
  input,
  path,
});

/** Nominal size in millimetres; a pipe that is thinner than any drain, or wider, counts as it is. */
function nominal(bore: number): number {
  const size = nominalSize({ boreM: bore / 1000 });
  return size.ok ? size.value * 1000 : bore;
}
