import { type Fitting, pathOf, type Table } from '../../../../plan';
import {
  askFor,
  createMessages,
  createRefusal,
  type FigureReading,
  type FormulaResult,
  judge,
  type NoParams,
  readFigure,
  refuse,
} from '../../../../rules';
import { type Line, type PlacedTable, type Scene, thingPath } from '../../../../scene';
import { toSI } from '../../../../units';
import { racksNeededInPeakFigure as racksNeededInPeak } from '../../../capacity';
import { ratedRate } from '../../../line';
import { gripMultiplier, handsBeforeAnkles } from '../../formulas/grip';
import { frequencyMultiplier, type LiftingDuration, liftingDuration, liftingDurationRule } from '../../formulas/liftingFrequency';
import { LIFTING_CLIMATE, LIFTING_CONTAINER, type LiftInputs } from '../../formulas/liftingLimit';

/** Both ends of the lift of a loaded rack, from the clean deck to the lowest shelf of the storage; or the reading that stands in its way. */
export interface RackLift {
  subjects: string[];
  ends: { part: 'deck' | 'shelf' | 'overshelf'; inputs: LiftInputs }[];
}

/** What the inputs of a lift are called. */
export interface RackLiftAsks {
  'lifting-limit/ask-deck': { role: Table['role'] };
  'lifting-limit/ask-shelf': NoParams;
  'lifting-limit/ask-rest': NoParams;
}

const say = createMessages<RackLiftAsks>();

/** The body's turn that the manual takes in its own example of a dish machine. */
const TURN_DEG = 30;

/** Every lift of a line, or what stands in its way: from the clean deck to the storage, then to the overshelves. */
export function liftsOf(scene: Scene, line: Line): (RackLift | { reading: FigureReading })[] {
  const lift = rackLift(scene, line);
  return [...(lift === null ? [] : [lift]), ...overshelfLifts(scene, line)];
}

/** A line without a clean table or a storage has no such lift. */
function rackLift(scene: Scene, line: Line): RackLift | { reading: FigureReading } | null {
  const { clean, stations, machine } = line;
  const storage = scene.things.find(({ thing }) => thing.id === stations.find(({ kind }) => kind === 'storage')?.subject);
  if (clean === null || storage === undefined) return null;
  const subjects = [machine.machine.id, storage.thing.id];
  const heights = { deck: clean.nodes[0]?.z ?? null, shelf: storage.thing.clearBelow };
  if (heights.deck === null) {
    const field = clean.table.deck.kind === 'fall' ? ['jointHeight'] : ['heights', 0];
    return {
      reading: askFor(
        subjects,
        say('lifting-limit/ask-deck', { role: 'clean' }),
        pathOf(scene.plan, 'tables', clean.table.id, 'deck', ...field),
      ),
    };
  }
  if (heights.shelf === null) return { reading: askFor(subjects, say('lifting-limit/ask-shelf'), thingPath(storage, 'clearBelow')) };
  const pace = paceOf(scene, line, subjects);
  if ('reading' in pace) return pace;
  const travelM = Math.abs(heights.deck - heights.shelf) / 1000;
  const originM = heights.deck / 1000;
  const common = { containerM: scene.plan.settings.rackSize / 1000, originM, travelM, ...pace };
  const deck = endOf(subjects, originM, common);
  const shelf = endOf(subjects, heights.shelf / 1000, common);
  if ('reading' in deck) return deck;
  if ('reading' in shelf) return shelf;
  return {
    subjects,
    ends: [
      { part: 'deck', inputs: deck.inputs },
      { part: 'shelf', inputs: shelf.inputs },
    ],
  };
}

/**
 * The lift of a loaded rack from the deck to each overshelf of the line's tables that is deep enough to hold one: half of it rests there
 * before it is let go. The hands come to the shelf's near edge, over the table, with the feet before it.
 */
function overshelfLifts(scene: Scene, line: Line): (RackLift | { reading: FigureReading })[] {
  return [line.soiled, line.clean].flatMap((placed) =>
    (placed?.fittings ?? []).flatMap(({ fitting }) =>
      placed !== null && fitting.kind === 'overshelf' && fitting.depth >= scene.plan.settings.rackSize / 2 - 1e-6
        ? [overshelfLift(scene, line, placed, fitting)]
        : [],
    ),
  );
}

type Overshelf = Extract<Fitting, { kind: 'overshelf' }>;

function overshelfLift(
  scene: Scene,
  line: Line,
  { table, nodes }: PlacedTable,
  { id, height, depth }: Overshelf,
): RackLift | { reading: FigureReading } {
  const subjects = [line.machine.machine.id, id, table.id];
  const deck = nodes[0]?.z ?? null;
  if (deck === null) {
    const field = table.deck.kind === 'fall' ? ['jointHeight'] : ['heights', 0];
    const input = say('lifting-limit/ask-deck', { role: table.role });
    return { reading: { part: 'overshelf', ...askFor(subjects, input, pathOf(scene.plan, 'tables', table.id, 'deck', ...field)) } };
  }
  const pace = paceOf(scene, line, subjects);
  if ('reading' in pace)
    return {
      reading: {
        ...pace.reading,
        part: 'overshelf',
      },
    };
  const common = {
    containerM: scene.plan.settings.rackSize / 1000,
    originM: deck / 1000,
    travelM: Math.abs(height - deck) / 1000,
    ...pace,
  };
  const end = endOf(subjects, height / 1000, common);
  if ('reading' in end)
    return {
      reading: {
        ...end.reading,
        part: 'overshelf',
      },
    };
  const horizontalM = Math.max(end.inputs.horizontalM, (table.depth - depth) / 1000);
  return { subjects, ends: [{ part: 'overshelf', inputs: { ...end.inputs, horizontalM } }] };
}

interface Pace {
  liftsPerH: number;
  duration: LiftingDuration;
}

/** As many lifts as racks come back in the peak, at most as many as the machine washes, for as long as the peak lasts. */
function paceOf(scene: Scene, { machine }: Line, subjects: string[]): Pace | { reading: FigureReading } {
  const needed = readFigure(racksNeededInPeak, scene)[0];
  if (needed?.value == null)
    return { reading: { ...(needed ?? refuse([], createRefusal(racksNeededInPeak, 'peak-racks-not-known', {}))), subjects } };
  const rated = ratedRate(machine);
  if (!rated.ok) return { reading: refuse(subjects, rated.refusal) };
  const { peakMinutes, restMinutes } = scene.plan.demand;
  const workS = toSI(peakMinutes ?? Number.NaN, 'min');
  const duration = liftingDuration(workS, toSI(restMinutes ?? 0, 'min'));
  const isDecided = duration === liftingDuration(workS, Number.POSITIVE_INFINITY);
  if (restMinutes === null && !isDecided) return { reading: askFor(subjects, say('lifting-limit/ask-rest'), ['demand', 'restMinutes']) };
  if (duration === null) return { reading: refuse(subjects, createRefusal(liftingDurationRule, 'lifting-too-long', {})) };
  return { liftsPerH: Math.min(needed.value, rated.value), duration };
}

interface Container extends Pace {
  containerM: number;
  /** Hands where the lift begins: they pick the column of the frequency for both of its ends. */
  originM: number;
  travelM: number;
}

/** One end of the lift, by the metric constants: of the two forms that the manual prints they are the stricter. Racks with handholds: the manual rates the grip of such a tray as good. */
function endOf(
  subjects: string[],
  verticalM: number,
  { containerM, originM, travelM, ...pace }: Container,
): { inputs: LiftInputs } | { reading: FigureReading } {
  const horizontal = handsBeforeAnkles({ containerM, verticalM });
  const frequency = frequencyMultiplier({ verticalM: originM, ...pace });
  const coupling = gripMultiplier({ grip: 'good', verticalM });
  for (const answer of [horizontal, frequency, coupling]) if (!answer.ok) return { reading: refuse(subjects, answer.refusal) };
  const valueOf = (answer: FormulaResult) => (answer.ok ? answer.value : Number.NaN);
  return {
    inputs: {
      horizontalM: valueOf(horizontal),
      verticalM,
      travelM,
      angleDeg: TURN_DEG,
      frequency: valueOf(frequency),
      coupling: valueOf(coupling),
      form: 'metric',
    },
  };
}

/** Whether this room is none of those that the equation was made for: a dish room often is too hot and too humid. */
export function isOutsideClimate({ air }: Scene['plan']): boolean {
  const [temperature, humidity] = LIFTING_CLIMATE;
  const isOut = (limit: (typeof LIFTING_CLIMATE)[number] | undefined, value: number | null) =>
    limit !== undefined && value !== null && judge(limit, value) !== 'pass';
  return isOut(temperature, air.roomC) || isOut(humidity, air.roomHumidity);
}

/** Whether racks are longer than what is best to hold. */
export function isLongToHold({ settings }: Scene['plan']): boolean {
  const [length] = LIFTING_CONTAINER;
  return length !== undefined && judge(length, settings.rackSize / 1000) !== 'pass';
}
