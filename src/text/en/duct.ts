import type { DuctMaterialMessages } from '../../topics/duct/checks/duct-material';
import type { DuctWallDryMessages } from '../../topics/duct/checks/duct-wall-dry';
import type { FanOnRunMessages } from '../../topics/duct/checks/fan-on-run';
import type { FanReachesAirflowMessages } from '../../topics/duct/checks/fan-reaches-airflow';
import type { OutletDistancesMessages } from '../../topics/duct/checks/outlet-distances';
import type { RunDrainsMessages } from '../../topics/duct/checks/run-drains';
import type { RunEquivalentLengthMessages } from '../../topics/duct/checks/run-equivalent-length';
import type { RunReachesOutsideMessages } from '../../topics/duct/checks/run-reaches-outside';
import type { RunSpeedMessages } from '../../topics/duct/checks/run-speed';
import type { RunEquivalentLengthFigureMessages } from '../../topics/duct/figures/run-equivalent-length';
import type { RunFrictionMessages } from '../../topics/duct/figures/run-friction';
import type { RunLossMessages } from '../../topics/duct/figures/run-loss';
import type { DuctAskMessages } from '../../topics/duct/figures/support/ductAsks';
import type { DuctWallsMessages } from '../../topics/duct/figures/support/ductWalls';
import type { FanReadingsMessages } from '../../topics/duct/figures/support/fanReadings';
import type { RunBendsMessages } from '../../topics/duct/figures/support/runBends';
import { type Formatter, formatNumber } from '../../units';
import { refusalSentence } from '../quantities/refusalSentence';
import type { Wording } from '../wording';
import { nameWords } from './names';
import { decimal, numberWord, sentence } from './words';

/** The words of the run: its duct, its way, its fan and its outlet. */
export const duct: Wording<
  DuctAskMessages &
    DuctMaterialMessages &
    DuctWallDryMessages &
    FanOnRunMessages &
    FanReachesAirflowMessages &
    OutletDistancesMessages &
    RunDrainsMessages &
    RunEquivalentLengthMessages &
    RunReachesOutsideMessages &
    RunSpeedMessages &
    DuctWallsMessages &
    FanReadingsMessages &
    RunBendsMessages &
    RunEquivalentLengthFigureMessages &
    RunFrictionMessages &
    RunLossMessages
> = {
  'duct/ask-material': () => 'material of the duct',
  'duct/ask-bend-radius': () => 'radius of the bends',
  'duct/ask-cap': () => 'weather cap on the outlet',
  'duct/ask-exhaust-temperature': () => 'temperature of the air in the run',
  'duct/ask-exhaust-humidity': () => 'humidity of the air in the run',
  'duct/ask-insulation': () => 'insulation about the run',
  'duct/ask-fan-curve': () => 'fan curve on the data sheet',

  'duct-material/unknown': ({ run }) => `What is ${nameWords(run)} made of? Rigid metal is asked for.`,
  'duct-material/rigid-metal': ({ run, material }) => sentence(`${nameWords(run)} is ${MATERIALS[material]}: rigid metal.`),
  'duct-material/no-rigid-metal': ({ run, material }) =>
    sentence(`${nameWords(run)} is ${MATERIALS[material]}; the duct of a dish machine is to be rigid metal. Take stainless steel.`),
  'duct-material/stainless': ({ run }) => sentence(`${nameWords(run)} is stainless steel from end to end.`),
  'duct-material/not-stainless': ({ run, material }) =>
    sentence(
      `${nameWords(run)} is ${MATERIALS[material]}; criteria of the government want all of a dish machine’s duct of stainless steel. Take it, or let the local code decide.`,
    ),
  'duct-material/repair-take-stainless': () => 'Make the run of stainless steel',
  'duct-material/ask-joints': () => 'whether the joints of the run are tight',
  'duct-material/joints-unknown': ({ run }) => `Are the joints of ${nameWords(run)} tight? What condenses in it must stay inside.`,
  'duct-material/joints-tight': ({ run }) => `The joints of ${nameWords(run)} are tight: what condenses in it stays inside.`,
  'duct-material/joints-leak': ({ run }) =>
    `The joints of ${nameWords(run)} are not tight: what condenses in it drips out of them. Have them sealed.`,
  'duct-material/repair-seal-joints': () => 'Call for tight joints',

  'duct-wall-dry/what': (wall) => `whether ${wallWords(wall)} stays dry`,
  'duct-wall-dry/dry': ({ temperature, above, ...wall }, f) =>
    sentence(`${wallWords(wall)} is at ${f.temperature(temperature)}, ${f.temperatureDifference(above)} above the dew point of its air.`),
  'duct-wall-dry/wet': ({ temperature, below, insulation, ...wall }, f) =>
    sentence(
      `${wallWords(wall)} is at ${f.temperature(temperature)}, ${f.temperatureDifference(below)} below the dew point of its air, and runs wet. Insulate it with ${f.length(insulation)} or more, or give it its fall and a drain.`,
    ),
  'duct-wall-dry/wet-whatever': ({ temperature, below, ...wall }, f) =>
    sentence(
      `${wallWords(wall)} is at ${f.temperature(temperature)}, ${f.temperatureDifference(below)} below the dew point of its air, and runs wet; no insulation that is built keeps it dry. Give it its fall, sealed joints and a drain.`,
    ),
  'duct-wall-dry/repair-insulate-run': ({ insulation }, f) => `Insulate the run with ${f.length(insulation)}`,

  'fan-on-run/ask-fan': ({ run }) => `fan of ${nameWords(run)}`,
  'fan-on-run/no-fan': ({ run }) => sentence(`${nameWords(run)} has no fan yet. Place it on the machine or above the ceiling.`),
  'fan-on-run/on-run': ({ run, at, length }, f) =>
    `The fan sits ${f.length(at)} from the collar; ${nameWords(run)} is ${f.length(length)} long.`,
  'fan-on-run/beyond-run': ({ run, at, length }, f) =>
    `The fan is drawn ${f.length(at)} from the collar, and ${nameWords(run)} is only ${f.length(length)} long. Move it onto the run.`,
  'fan-on-run/repair-fan-onto-run': ({ length }, f) => `Move the fan back to ${f.length(length)} from the collar`,
  'fan-on-run/ask-drain-hole': () => 'drain hole of the fan',
  'fan-on-run/drain-hole-unknown': () => 'The fan lies on its side. Has it a drain hole at its bottom? Without one it fills with water.',
  'fan-on-run/drain-hole': () => 'The fan lies on its side and has a drain hole at its bottom.',
  'fan-on-run/no-drain-hole': () =>
    'The fan lies on its side and has no drain hole at its bottom; it would fill with water. Have one made, as the maker’s manual shows, with the power off.',
  'fan-on-run/repair-make-drain-hole': () => 'Call for a drain hole at the fan’s bottom',
  'fan-on-run/ask-cord-way': () => 'way of the fan cord',
  'fan-on-run/cord-way-unknown': ({ straight, cord }, f) =>
    `The way of the fan’s cord is not known. In a straight line it is ${f.length(straight)}; the cord is ${f.length(cord)}. Measure it as the cord will lie.`,
  'fan-on-run/cord-reaches': ({ way, cord }, f) => `The cord’s way is ${f.length(way)}; ${f.length(cord)} of cord come with the machine.`,
  'fan-on-run/cord-short': ({ way, cord, isLeast }, f) =>
    `The cord’s way is ${isLeast ? 'at least ' : ''}${f.length(way)} and the cord ${f.length(cord)}: ${f.length(way - cord)} short. Bring the fan nearer, or plan field wiring. Field wiring belongs to a licensed electrician.`,

  'fan-reaches-airflow/what': ({ run }) => `what the fan draws through ${nameWords(run)}`,
  'fan-reaches-airflow/reaches': ({ run, airflow, needed }, f) =>
    `Through ${nameWords(run)} the fan draws ${f.airflow(airflow)}; ${f.airflow(needed)} are needed.`,
  'fan-reaches-airflow/too-weak': ({ run, airflow, needed }, f) =>
    `Through ${nameWords(run)} the fan draws ${f.airflow(airflow)} of the ${f.airflow(needed)} that are needed: ${f.airflow(needed - airflow)} too little. Shorten the run, take bends out, widen it, or ask the maker for another fan.`,
  'fan-reaches-airflow/ask-bend-make': () => 'make of the bends',

  'outlet-distances/far': ({ run, from, away, least }, f) =>
    `The outlet of ${nameWords(run)} is ${f.length(away)} ${WHENCE[from]}; ${f.length(least)} is the least.`,
  'outlet-distances/near': ({ run, from, away, least }, f) =>
    `The outlet of ${nameWords(run)} is ${f.length(away)} ${WHENCE[from]}, ${f.length(least - away)} less than the ${f.length(least)} that are asked. Let it end farther off.`,
  'outlet-distances/ask-distance': ({ from }) => `distance of the outlet ${WHENCE[from]}`,
  'outlet-distances/unknown': ({ run, from, least }, f) =>
    `How far is the outlet of ${nameWords(run)} ${WHENCE[from]}? At least ${f.length(least)} is asked.`,

  'run-drains/sags-nowhere': ({ run }) => sentence(`${nameWords(run)} sags nowhere: its water runs to its ends.`),
  'run-drains/ask-drain': () => 'drain at the low point of the run',
  'run-drains/drain-unknown': ({ run, height }, f) =>
    sentence(`${nameWords(run)} sags at ${f.length(height)} above the floor. Has it a drain there?`),
  'run-drains/drained': ({ run, height }, f) =>
    sentence(`${nameWords(run)} sags at ${f.length(height)} above the floor and has a drain there.`),
  'run-drains/not-drained': ({ run, height }, f) =>
    sentence(
      `${nameWords(run)} sags at ${f.length(height)} above the floor and has no drain there: water stands in it. Give it a drain line at its low point, or let it rise all the way.`,
    ),
  'run-drains/repair-add-low-point-drain': () => 'Call for a drain line at the low point',
  'run-drains/falls': ({ run, slope, least }, f) =>
    sentence(`${nameWords(run)} falls nowhere less than ${f.slope(slope)}; ${f.slope(least)} is usual.`),
  'run-drains/level': ({ run, least }, f) =>
    `A leg of ${nameWords(run)} lies level; ${f.slope(least)} lets its water run. Let it rise from the collar on.`,
  'run-drains/flat': ({ run, slope, least }, f) =>
    `A leg of ${nameWords(run)} falls only ${f.slope(slope)}; ${f.slope(least)} lets its water run. Let it rise from the collar on.`,
  'run-drains/repair-pitch-run': ({ slope }, f) => `Let its flat legs rise ${f.slope(slope)} from the collar on`,

  'run-equivalent-length/ask-run-of': ({ machine }) => `run of ${nameWords(machine)}`,
  'run-equivalent-length/no-run': ({ machine, most }, f) =>
    sentence(`${nameWords(machine)} vents through a run of its own, and none is drawn. Draw it; it may count as ${f.length(most)}.`),
  'run-equivalent-length/ask-way': ({ run }) => `way of ${nameWords(run)}`,
  'run-equivalent-length/not-counted': ({ refusal }) => `The run cannot be counted: ${refusal === null ? '' : refusalSentence(refusal)}.`,
  'run-equivalent-length/holds': ({ most, ...counted }, f) =>
    sentence(`${sumWords(counted, f)}. ${f.length(most)} is the limit, ${f.length(most - counted.total)} is left.`),
  'run-equivalent-length/over': ({ over, allowance, ...counted }, f) =>
    sentence(`${sumWords(counted, f)}. That is ${f.length(over)} over${inElbows(over, allowance)}. Shorten it or take bends out.`),

  'run-reaches-outside/ask-ceiling-height': () => 'ceiling height',
  'run-reaches-outside/unknown': ({ run }) =>
    `Whether ${nameWords(run)} ends above the ceiling is not known. Give the height of the ceiling.`,
  'run-reaches-outside/outside': ({ run }) => sentence(`${nameWords(run)} ends in the open air.`),
  'run-reaches-outside/inside': ({ run, outlet }) =>
    sentence(
      `${nameWords(run)} ends in the room, not ${outlet === 'wall' ? 'outside the wall' : 'above the ceiling'}. Draw it on to the open air.`,
    ),

  'run-speed/what': ({ run }) => `the velocity in ${nameWords(run)}`,
  'run-speed/slow': ({ run, speed, least, most }, f) =>
    `In ${nameWords(run)} the air goes ${f.speed(speed)}, slower than the ${f.speed(least)} to ${f.speed(most)} that carry vapour. Take a narrower duct, or more air.`,
  'run-speed/fast': ({ run, speed, least, most }, f) =>
    `In ${nameWords(run)} the air goes ${f.speed(speed)}, faster than the ${f.speed(least)} to ${f.speed(most)} that are usual. Take a wider duct.`,
  'run-speed/usual': ({ run, speed, least, most }, f) =>
    `In ${nameWords(run)} the air goes ${f.speed(speed)}; ${f.speed(least)} to ${f.speed(most)} are usual.`,

  'duct-walls/coldest-outside': () => 'In the coldest air outside, with wind of 15 mph on it.',
  'duct-walls/kind-unknown': ({ counted }) =>
    `The kind of insulation is not known: it counts as ${INSULATIONS[counted]}, which keeps least.`,
  'duct-walls/films': () => 'The usual films of air inside and outside are from memory.',
  'duct-walls/governs': () => 'It governs.',
  'fan-readings/air-of-run': () => 'The curve of the data sheet, turned by the fan laws to the air in the run.',
  'fan-readings/whole-loss': () => 'Held against the whole loss, that of the open end with it.',
  'fan-readings/hunts': () => 'The curves meet more than once: the fan may hunt between them.',
  'run-bends/assumed-smooth': () => 'How the bends are made is not known: they count as smooth. Bends of straight pieces lose more.',
  'run-bends/counted-as-round': () =>
    'No value is held for a rectangular bend of this shape and radius: it counts as a round one, and can lose more.',
  'run-bends/more-in-slow-air': () =>
    'Below a Reynolds number of 140,000 a mitred bend loses more than is counted: 4 % more at 100,000, two fifths more at 10,000.',
  'run-equivalent-length/ask-run': () => 'run of the machine',
  'run-equivalent-length/share': ({ length, most }) => `${Math.round((length * 100) / most)} % of what the data sheet allows.`,
  'run-friction/factors': ({ factors }) => {
    const [first, ...others] = factors.map(({ method, factor }) => `by ${FRICTION_METHODS[method]} ${formatNumber(factor, 4)}`);
    return `Friction factor ${first ?? 'unknown'}, which is taken${others.length === 0 ? '' : `; ${others.join(', ')}`}.`;
  },
  'run-friction/handbook': () =>
    'A handbook designs large dishwasher ducts for 0.10 and at most 0.15 in. wg to 100 ft (0.8 and 1.2 Pa/m); narrow ones cannot keep that and the velocity that carries vapour, and there the velocity counts.',
  'run-loss/whole': () => 'At the airflow that the run must carry, in the air that is in it.',
  'run-loss/bends': () => 'Each bend by its angle, radius and make; the friction along it is in the length.',
  'run-loss/entry': () => 'The collar is counted as a flush, sharp entry.',
  'run-loss/exit': ({ cap }) => `The open end ${CAPS[cap]}.`,
};

const MATERIALS: Readonly<Record<DuctMaterialMessages['duct-material/rigid-metal']['material'], string>> = {
  galvanized: 'galvanized steel',
  'galvanized-spiral': 'galvanized spiral duct',
  stainless: 'stainless steel',
  aluminum: 'aluminum',
  pvc: 'PVC',
  flexible: 'flexible duct',
};

const INSULATIONS: Readonly<Record<DuctWallsMessages['duct-walls/kind-unknown']['counted'], string>> = {
  'mineral-fiber': 'mineral fiber',
  'glass-fiber-board': 'glass-fiber board',
  'cellular-glass': 'cellular glass',
  'elastomeric-foam': 'flexible elastomeric foam',
};

/** `the wall of the run`, `the wall of run 6 outdoors`. */
const wallWords = ({ run, part }: DuctWallDryMessages['duct-wall-dry/what']) =>
  `the wall of ${nameWords(run)}${part === null ? '' : ` ${part}`}`;

const WHENCE: Readonly<Record<OutletDistancesMessages['outlet-distances/far']['from'], string>> = {
  wall: 'from the room’s side of the wall',
  door: 'from a door',
  window: 'from a window',
  line: 'from the nearest property line or other building on the lot',
  intake: 'from the nearest air intake',
  ground: 'above the ground',
  roof: 'above the roof',
};

function sumWords(
  { run, total, straight, elbows }: Omit<RunEquivalentLengthMessages['run-equivalent-length/holds'], 'most'>,
  f: Formatter,
): string {
  const bends = `${decimal(elbows)} ${elbows === 1 ? 'elbow' : 'elbows'}`;
  return `${nameWords(run)} counts as ${f.length(total)}: ${f.length(straight)} and ${bends}`;
}

/** `, which is two elbows` where it comes out even; else `, more than two elbows`, or nothing below one. */
function inElbows(over: number, allowance: number): string {
  if (allowance <= 0 || over < allowance * 0.95) return '';
  const elbows = over / allowance;
  const whole = Math.round(elbows);
  const words = (n: number) => `${numberWord(n)} ${n === 1 ? 'elbow' : 'elbows'}`;
  return Math.abs(elbows - whole) <= 0.05 ? `, which is ${words(whole)}` : `, more than ${words(Math.floor(elbows))}`;
}

const FRICTION_METHODS: Readonly<Record<RunFrictionMessages['run-friction/factors']['factors'][number]['method'], string>> = {
  colebrook: 'Colebrook',
  haaland: 'Haaland',
  'swamee-jain': 'Swamee–Jain',
  'altshul-tsal': 'Altshul–Tsal',
  churchill: 'Churchill',
};

const CAPS: Readonly<Record<RunLossMessages['run-loss/exit']['cap'], string>> = {
  none: 'without a cap',
  'well-spaced': 'and a weather cap that is well spaced',
  'low-cone': 'and a low cone over it',
};
