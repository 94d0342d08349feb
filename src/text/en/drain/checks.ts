import type { DrainCarriesMessages } from '../../../topics/drain/checks/drain-carries';
import type { DrainNearMessages } from '../../../topics/drain/checks/drain-near';
import type { DrainSizeMessages } from '../../../topics/drain/checks/drain-size';
import type { DrainSlopeMessages } from '../../../topics/drain/checks/drain-slope';
import type { DrainUnitsCheckMessages } from '../../../topics/drain/checks/drain-units';
import type { ReceptorHoldsMessages } from '../../../topics/drain/checks/receptor-holds';
import type { SinkWasteMessages } from '../../../topics/drain/checks/sink-waste';
import type { ReceptorReachMessages } from '../../../topics/drain/checks/support/receptorReach';
import type { WasteAirGapMessages } from '../../../topics/drain/checks/waste-air-gap';
import type { WasteDirectMessages } from '../../../topics/drain/checks/waste-direct';
import { type Formatter, formatNumber } from '../../../units';
import { refusalSentence } from '../../quantities/refusalSentence';
import type { Wording } from '../../wording';
import { nameWords } from '../names';
import { list, sentence } from '../words';

type CheckMessages = DrainCarriesMessages &
  DrainSizeMessages &
  DrainSlopeMessages &
  DrainUnitsCheckMessages &
  WasteAirGapMessages &
  WasteDirectMessages &
  DrainNearMessages &
  SinkWasteMessages &
  ReceptorHoldsMessages &
  ReceptorReachMessages;

export const checks: Wording<CheckMessages> = {
  'drain-carries/what': () => 'what the drain carries',
  'drain-carries/carries': (of, f) => sentence(`${lets(of, f)} ${f.waterFlow(of.half)} half full.`),
  'drain-carries/half-exceeded': (of, f) =>
    sentence(
      `${lets(of, f)} ${f.waterFlow(of.half)} half full, as drains are sized, and ${f.waterFlow(of.full)} brim full. Take a larger drain.`,
    ),
  'drain-carries/full-exceeded': (of, f) =>
    sentence(`${lets(of, f)} ${f.waterFlow(of.full)} brim full. Take a larger drain, more fall, or a floor sink that holds the rest.`),

  'drain-size/what-branch': () => 'the least size of a floor drain’s pipe',
  'drain-size/branch': (sizes, f) => `${branchSize(sizes, f)}.`,
  'drain-size/branch-too-small': (sizes, f) => `${branchSize(sizes, f)}. Have a larger one laid.`,
  'drain-size/no-trap': () =>
    'The floor drain has no trap, and the air of the sewer comes into the room. Have a plumber set one below it, and keep it filled.',
  'drain-size/ask-waste-bore': () => 'inside diameter of its waste pipe',
  'drain-size/what-outlet': () => 'the machine’s outlet',
  'drain-size/outlet': (sizes, f) => `${outletSize(sizes, f)}.`,
  'drain-size/narrower-than-outlet': (sizes, f) => `${outletSize(sizes, f)}. Take a pipe as wide as the outlet.`,
  'drain-size/what-tank': () => 'the least waste for its tank',
  'drain-size/tank': (sizes, f) => `${tankSize(sizes, f)}.`,
  'drain-size/too-small-for-tank': (sizes, f) => `${tankSize(sizes, f)}. Ask the local authority.`,

  'drain-slope/not-known': ({ ask }, _f, tell) => `To hold the fall of its drain against the least, say the ${tell(ask)}.`,
  'drain-slope/ask-waste-bore': () => 'inside diameter of the waste pipe',
  'drain-slope/ask-waste-slope': () => 'fall of the waste pipe',
  'drain-slope/what': () => 'the least fall of the drain',
  'drain-slope/enough': (fall, f) => falls(fall, f),
  'drain-slope/too-little': (fall, f) => `${falls(fall, f)} Lay it steeper, or have a plumber take a larger one.`,

  'drain-units/what': () => 'whether the branch may take what empties into it',
  'drain-units/within': (counted, f) => `${counts(counted, f)}.`,
  'drain-units/exceeded': (counted, f) => `${counts(counted, f)}. Take a larger branch.`,
  'drain-units/exceeded-by-flow': (counted, f) =>
    `${counts(counted, f)}. Take a larger branch, or ask the local authority whether the machine counts as a steady flow.`,

  'waste-air-gap/ask-gap': () => 'air gap from the end of the waste pipe to the rim of the floor sink',
  'waste-air-gap/what': () => 'the least air gap',
  'waste-air-gap/enough': (gap, f) => `${wasteEnds(gap, f)}.`,
  'waste-air-gap/too-little': (gap, f) => `${wasteEnds(gap, f)}. Cut the pipe ${f.length(gap.missing)} shorter.`,
  'waste-air-gap/not-known': ({ machine }) =>
    `Say whether the waste of ${nameWords(machine)} runs over an air gap or is connected directly.`,
  'waste-air-gap/repair-widen-air-gap': ({ least }, f) => `Leave an air gap of ${f.length(least)}`,

  'waste-direct/ask-drain': () => 'floor drain',
  'waste-direct/no-drain': () => 'The machine is connected directly, and no floor drain is drawn: draw the trapped one beside it.',
  'waste-direct/ask-trapped': () => 'trap of the floor drain',
  'waste-direct/trapped-not-known': () => 'The machine is connected directly: say whether the floor drain beside it has a trap.',
  'waste-direct/ask-vented': () => 'vent of the floor drain’s trap',
  'waste-direct/vented-not-known': () => 'The machine is connected directly: say whether the trap of the floor drain beside it is vented.',
  'waste-direct/unfit': ({ machine, refusal }) =>
    sentence(
      `${nameWords(machine)} is connected directly, but ${refusal === null ? 'no floor drain serves' : refusalSentence(refusal)}. Let it run over an air gap, or set a trapped and vented floor drain beside it.`,
    ),
  'waste-direct/near': (direct, f) => `${isDirect(direct, f)}; up to ${f.length(direct.most)} it may be, where local law allows it.`,
  'waste-direct/too-far': (direct, f) =>
    `${isDirect(direct, f)}, and may be ${f.length(direct.most)} at most. Let it run over an air gap, or set such a drain nearer.`,

  'drain-near/what-way': () => 'the way of the waste to the floor drain',
  'drain-near/way': (run, f) => `${wasteRuns(run, f)}; it may run ${f.length(run.most)}.`,
  'drain-near/way-too-long': (run, f) => `${wasteRuns(run, f)}, and may run ${f.length(run.most)} at most. Set a floor drain nearer.`,
  'drain-near/ask-trap': () => 'trap of the waste pipe',
  'drain-near/trap-not-needed': (pipe, f) => `${pipeRuns('no more than', pipe, f)}, and needs no trap of its own.`,
  'drain-near/trap-not-said': (pipe, f) => `${pipeRuns('more than', pipe, f)}: say whether it has a trap of its own.`,
  'drain-near/trap': (pipe, f) => `${pipeRuns('more than', pipe, f)}, and has a trap of its own.`,
  'drain-near/trap-missing': (pipe, f) =>
    `${pipeRuns('more than', pipe, f)}, and has no trap of its own. Have one built in, or set a floor drain nearer.`,
  'drain-near/what-fall': () => 'whether the waste can run to the floor drain',
  'drain-near/ends-right': (ending, f) => `${pipeEnds(ending, f)}.`,
  'drain-near/ends-too-low': (ending, f) => `${pipeEnds(ending, f)}. Set a floor drain nearer.`,

  'sink-waste/not-known': ({ sink, bowls }) => {
    const { the, empty, are } = BOWLS[bowls];
    return `Say whether ${the} of ${nameWords(sink)} ${empty} over an air gap or ${are} connected directly.`;
  },
  'sink-waste/no-drain': ({ sink }) => `No floor drain is drawn: draw the one that ${nameWords(sink)} empties into, or that is beside it.`,
  'sink-waste/direct': (sink, f) =>
    `${sinkIsDirect(sink, f)}; up to ${f.length(sink.most)} ${sink.bowls === 'one' ? 'it' : 'they'} may be, where local code allows it.`,
  'sink-waste/direct-too-far': (sink, f) =>
    `${sinkIsDirect(sink, f)}, and may be ${f.length(sink.most)} at most. ${BOWLS[sink.bowls].let}, or have a floor drain set nearer.`,
  'sink-waste/way': (sink, f) =>
    `${sinkEmpties(sink, f)}. ${BOWLS[sink.bowls].has} a pipe and a gap of its own, and a trap where the pipe runs more than ${f.length(sink.mostLevel)} on the level.`,
  'sink-waste/way-too-long': (sink, f) => `${sinkEmpties(sink, f)}. Set a floor drain nearer.`,

  'receptor-holds/ask-volume': () => 'volume that the floor sink holds',
  'receptor-holds/what': () => 'what the floor sink must hold',
  'receptor-holds/keeps-up': ({ machine }) => `The pipe below the floor sink keeps up with ${nameWords(machine)} as it empties.`,
  'receptor-holds/holds': (volumes, f) => `${sinkFills(volumes, f)}.`,
  'receptor-holds/runs-over': (volumes, f) => `${sinkFills(volumes, f)}. Take a larger floor sink or a larger pipe below it.`,

  'receptor-reach/ask-clear-below': ({ cover }) => `free height under ${nameWords(cover)}`,
  'receptor-reach/not-known': ({ cover }) => `The floor drain lies under ${nameWords(cover)}: say the free height below it.`,
  'receptor-reach/in-reach': ({ owner }) => `The floor drain of ${nameWords(owner)} can be reached and cleaned.`,
  'receptor-reach/covered': ({ owner, cover, least }, f) =>
    `The floor drain of ${nameWords(owner)} lies under ${nameWords(cover)}${outOfReach(least, f)}`,
  'receptor-reach/under-machine': ({ owner, least }, f) =>
    `The floor drain of ${nameWords(owner)} lies under a machine${outOfReach(least, f)}`,
};

type Params<K extends keyof CheckMessages> = CheckMessages[K];

const lets = ({ machine, flow, pipe }: Pick<Params<'drain-carries/carries'>, 'machine' | 'flow' | 'pipe'>, f: Formatter) =>
  `${nameWords(machine)} lets out ${f.waterFlow(flow)}; ${pipe === 'own' ? 'its drain' : 'the pipe of the floor drain'} carries`;

const branchSize = ({ size, least }: Params<'drain-size/branch'>, f: Formatter) =>
  `The pipe of the floor drain is ${f.length(size)}; ${f.length(least)} is the least under ground, and the least trap that codes give a floor drain on any floor`;

const outletSize = ({ machine, size, least }: Params<'drain-size/outlet'>, f: Formatter) =>
  `The waste pipe of ${nameWords(machine)} is ${f.length(size)}, its outlet ${f.length(least)}`;

const tankSize = ({ machine, size, least }: Params<'drain-size/tank'>, f: Formatter) =>
  `The waste pipe of ${nameWords(machine)} is ${f.length(size)}; for its tank an old city code wants ${f.length(least)}`;

const LAID: Readonly<Record<Params<'drain-slope/enough'>['pipe'], string>> = {
  drain: 'The drain of',
  'floor-drain-pipe': 'The pipe of the floor drain that takes the waste of',
  'waste-pipe': 'The waste pipe of',
};

const falls = ({ machine, pipe, falls: slope, bore, least }: Params<'drain-slope/enough'>, f: Formatter) =>
  `${LAID[pipe]} ${nameWords(machine)} falls ${f.slope(slope)}; a pipe of ${f.length(bore)} needs ${f.slope(least)}.`;

function counts({ code, units, machines, hasSinks, bore, most }: Params<'drain-units/within'>, f: Formatter): string {
  // Chicago’s own table of sinks is not at hand.
  const by = code === 'chicago' && hasSinks ? `${CODES[code]}, for sinks that of an old city,` : code === null ? 'The code' : CODES[code];
  const rest = hasSinks ? ['what else empties into the floor drain'] : [];
  const load = machines.length === 0 ? 'the sinks that empty into the floor drain' : list([...machines.map(nameWords), ...rest]);
  return `${by} counts ${formatNumber(units, 1)} fixture units for ${load}; a branch of ${f.length(bore)} may take ${formatNumber(most)}`;
}

const CODES: Readonly<Record<NonNullable<Params<'drain-units/within'>['code']>, string>> = {
  ipc: 'The International code',
  upc: 'The Uniform code',
  chicago: 'Chicago’s code',
  'municipal-old': 'An old city code',
};

const wasteEnds = ({ machine, gap, least }: Params<'waste-air-gap/enough'>, f: Formatter) =>
  `The waste of ${nameWords(machine)} ends ${f.length(gap)} above the rim; the air gap must be ${f.length(least)}`;

const isDirect = ({ machine, way }: Params<'waste-direct/near'>, f: Formatter) =>
  sentence(`${nameWords(machine)} is connected directly, ${f.length(way)} from a floor drain that is trapped and vented`);

const wasteRuns = ({ machine, way }: Params<'drain-near/way'>, f: Formatter) =>
  `The waste of ${nameWords(machine)} runs ${f.length(way)} to the floor drain, its drop counted`;

const pipeRuns = (bound: string, { machine, mostLevel, mostWhole }: Params<'drain-near/trap'>, f: Formatter) =>
  `The waste pipe of ${nameWords(machine)} runs ${bound} ${f.length(mostLevel)} on the level or ${f.length(mostWhole)} in all`;

function pipeEnds({ machine, height, airGap }: Params<'drain-near/ends-right'>, f: Formatter): string {
  const needs = airGap === 0 ? 'it must come out above the floor' : `the air gap needs ${f.length(airGap)}`;
  return `Fallen as it must, the waste pipe of ${nameWords(machine)} ends ${f.length(Math.abs(height))} ${height < 0 ? 'below' : 'above'} the floor; ${needs}`;
}

/** How a sink with one bowl, or with several, is spoken of. */
const BOWLS = {
  one: { the: 'the bowl', empty: 'empties', are: 'is', has: 'It has', let: 'Let it empty over an air gap' },
  several: { the: 'the bowls', empty: 'empty', are: 'are', has: 'Each bowl has', let: 'Let each bowl empty over an air gap of its own' },
};

function sinkIsDirect({ sink, bowls, distance }: Params<'sink-waste/direct'>, f: Formatter): string {
  const { the, are } = BOWLS[bowls];
  return sentence(`${the} of ${nameWords(sink)} ${are} connected directly, ${f.length(distance)} from a floor drain in the same room`);
}

function sinkEmpties({ sink, bowls, distance, most }: Params<'sink-waste/way-too-long'>, f: Formatter): string {
  const { the, empty } = BOWLS[bowls];
  return sentence(
    `${the} of ${nameWords(sink)} ${empty} over an air gap, ${f.length(distance)} from the floor drain; a waste pipe may run ${f.length(most)} in all, its drop counted`,
  );
}

const sinkFills = ({ machine, gathers, holds }: Params<'receptor-holds/holds'>, f: Formatter) =>
  `While ${nameWords(machine)} empties, ${f.volume(gathers)} gather in the floor sink, which holds ${f.volume(holds)}`;

const outOfReach = (least: number, f: Formatter) =>
  `, where nobody can empty its strainer; it needs ${f.length(least)} free above it. Move one of the two.`;
