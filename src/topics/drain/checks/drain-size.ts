import {
  type Check,
  connectionPlace,
  createMessages,
  createRefusal,
  holdAgainst,
  lengthOf,
  type Measurement,
  type Message,
  type Name,
  type NoParams,
  nameMachine,
  pointPlace,
  type Said,
  type Source,
} from '../../../rules';
import { machinePath, type PlacedMachine, type PlacedRoom, type Scene } from '../../../scene';
import { DRAIN_BORE_INPUT } from '../figures/support/drains';
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

/** What is said of the sizes, all in mm. */
export interface DrainSizeMessages {
  'drain-size/what-branch': NoParams;
  'drain-size/branch': Sizes;
  'drain-size/branch-too-small': Sizes;
  'drain-size/no-trap': NoParams;
  'drain-size/ask-waste-bore': NoParams;
  'drain-size/what-outlet': NoParams;
  'drain-size/outlet': Sizes & { machine: Name };
  'drain-size/narrower-than-outlet': Sizes & { machine: Name };
  'drain-size/what-tank': NoParams;
  'drain-size/tank': Sizes & { machine: Name };
  'drain-size/too-small-for-tank': Sizes & { machine: Name };
}

interface Sizes {
  size: number;
  least: number;
}

const message = createMessages<DrainSizeMessages>();

/**
 * The pipe below each floor drain, by its nominal size. Whether it lies under ground the plan does not say; the trap that other codes
 * give a floor drain is as wide, so that the bound is the same on any floor.
 */
function measureBranch({ drain, centre }: PlacedRoom['floorDrains'][number], index: number): Measurement {
  const said = saidOf(drain.waste.bore, DRAIN_BORE_INPUT, ['room', 'floorDrains', index, 'waste', 'bore']);
  return holdAgainst(
    said,
    { subjects: [drain.id], value: lengthOf(UNDERGROUND_BRANCH_SIZE) },
    {
      part: 'branch',
      place: pointPlace(centre),
      what: message('drain-size/what-branch'),
      message: (size, least) => message(isSmaller(size, least) ? 'drain-size/branch-too-small' : 'drain-size/branch', { size, least }),
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
          message: message('drain-size/no-trap'),
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
        what: message('drain-size/what-outlet'),
        message: (size, least) =>
          message(isSmaller(size, least) ? 'drain-size/narrower-than-outlet' : 'drain-size/outlet', {
            machine: nameMachine(scene, placed),
            size,
            least,
          }),
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
      what: message('drain-size/what-tank'),
      message: (size, must) =>
        message(isSmaller(size, must) ? 'drain-size/too-small-for-tank' : 'drain-size/tank', {
          machine: nameMachine(scene, placed),
          size,
          least: must,
        }),
    },
  );
}

const ROUNDING = 1e-6;

const isSmaller = (size: number, least: number) => size < least - ROUNDING;

const wastePipe = (placed: PlacedMachine): Said =>
  saidOf(placed.machine.hookUp.drainBore, message('drain-size/ask-waste-bore'), machinePath(placed, 'hookUp', 'drainBore'));

const saidOf = (bore: number | null, input: Message, path: Said['path']): Said => ({
  value: bore === null ? null : nominal(bore),
  input,
  path,
});

/** Nominal size in millimetres; a pipe that is thinner than any drain, or wider, counts as it is. */
function nominal(bore: number): number {
  const size = nominalSize({ boreM: bore / 1000 });
  return size.ok ? size.value * 1000 : bore;
}
