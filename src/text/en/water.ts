import type { StaticPressureMessages } from '../../topics/water/checks/static-pressure';
import type { SupplyBackflowMessages } from '../../topics/water/checks/supply-backflow';
import type { HoldPressureMessages } from '../../topics/water/checks/support/holdPressure';
import type { WaterHardnessMessages } from '../../topics/water/checks/water-hardness';
import type { WaterPerRackCriteriaMessages } from '../../topics/water/checks/water-per-rack-criteria';
import type { HotWaterDemandMessages } from '../../topics/water/figures/hot-water-demand';
import type { PressureLeftMessages } from '../../topics/water/figures/pressure-at-machine';
import type { RinseFlowPressureMessages } from '../../topics/water/figures/rinse-flow-pressure';
import type { RinseWaterPerRackMessages } from '../../topics/water/figures/rinse-water-per-rack';
import type { ScalePerYearMessages } from '../../topics/water/figures/scale-per-year';
import type { SinkVolumeMessages } from '../../topics/water/figures/sink-volume';
import type { SupplyAirGapMessages } from '../../topics/water/figures/supply-air-gap';
import type { FeedMessages } from '../../topics/water/figures/support/feed';
import type { RinseWaterMessages } from '../../topics/water/figures/support/rinseWater';
import type { SinkBowlsMessages } from '../../topics/water/figures/support/sinkBowls';
import type { SprayUseMessages } from '../../topics/water/figures/support/sprayUse';
import type { WaterLineMessages } from '../../topics/water/figures/support/waterLine';
import type { HardnessOfWaterMessages } from '../../topics/water/figures/water-hardness';
import type { WaterLineLossMessages } from '../../topics/water/figures/water-line-loss';
import type { WaterPerDayMessages } from '../../topics/water/figures/water-per-day';
import type { WaterPerYearMessages } from '../../topics/water/figures/water-per-year';
import type { WaterSpeedMessages } from '../../topics/water/figures/water-speed';
import type { Formatter } from '../../units';
import type { Wording } from '../wording';
import { nameWords } from './names';
import { sentence } from './words';

type CheckMessages = HoldPressureMessages &
  StaticPressureMessages &
  SupplyBackflowMessages &
  WaterHardnessMessages &
  WaterPerRackCriteriaMessages;

type FigureMessages = RinseWaterMessages &
  RinseWaterPerRackMessages &
  WaterPerDayMessages &
  WaterPerYearMessages &
  SprayUseMessages &
  SinkBowlsMessages &
  SinkVolumeMessages &
  HotWaterDemandMessages &
  RinseFlowPressureMessages &
  FeedMessages &
  WaterLineMessages &
  WaterSpeedMessages &
  WaterLineLossMessages &
  PressureLeftMessages &
  SupplyAirGapMessages &
  HardnessOfWaterMessages &
  ScalePerYearMessages;

/** The words of the water: what is used, its pressure and hardness, and what keeps it apart. */
export const water: Wording<CheckMessages & FigureMessages> = {
  'rinse-pressure/what': () => 'whether the flow pressure at the stub is right',
  'rinse-pressure/within': (of, f) =>
    `${rinseHas(of, 'at the stub', f)}, within ${range(of, f)}; what its line leaves at the machine counts.`,
  'rinse-pressure/below': (of, f) => `${rinseHas(of, 'at the stub', f)} and ${asksFor(of, f)}${findOut(of, f)}`,
  'rinse-pressure/above': (of, f) => `${rinseHas(of, 'at the stub', f)} and ${allows(of, f)}${findOut(of, f)}`,

  'pressure-at-machine/ask-plate': () => 'flow pressure of the rinse on the data plate',
  'pressure-at-machine/what': () => 'whether the flow pressure at the machine is right',
  'pressure-at-machine/within': (of, f) => `${rinseHas(of, 'at the machine', f)}, within ${range(of, f)}.`,
  'pressure-at-machine/below': (of, f) =>
    `${rinseHas(of, 'at the machine', f)} and ${asksFor(of, f)}: have the pressure set higher or the pipe made wider, to ${range(of, f)}.`,
  'pressure-at-machine/above': (of, f) =>
    `${rinseHas(of, 'at the machine', f)} and ${allows(of, f)}: have a pressure-reducing valve fitted before it, set to ${range(of, f)}.`,
  'pressure-at-machine/what-is-left': () => 'What the line leaves of the pressure at the stub.',
  'pressure-at-machine/gauge': () => 'The gauge at the rinse valve tells the true one.',

  'rinse-flow-pressure/ask-at-stub': () => 'flow pressure at the stub',
  'rinse-flow-pressure/bounds': ({ isWithinFoodCode, isWithinOlder }) =>
    `${isWithinFoodCode ? 'Within' : 'Outside'} 5 to 30 psi of the food code, ${isWithinOlder ? 'within' : 'outside'} 15 to 25 psi of older rules.`,
  'rinse-flow-pressure/at-stub': () => 'Taken at the stub, not at the rinse valve; what the data plate states goes before it.',
  'rinse-flow-pressure/hot-rinses-alone': () => 'The code bounds hot-water rinses alone.',

  'static-pressure/ask': () => 'pressure in the pipe while nothing flows',
  'static-pressure/what': () => 'whether a pressure-reducing valve is needed',
  'static-pressure/within': ({ pressure, most }, f) =>
    `At rest the water stands at ${f.pressure(pressure)}, under the ${f.pressure(most)} above which it needs a pressure-reducing valve.`,
  'static-pressure/too-high': ({ pressure, most }, f) =>
    `At rest the water stands at ${f.pressure(pressure)}, more than ${f.pressure(most)}: have a pressure-reducing valve fitted, set to that or less, and an expansion tank after it; pipes after it are sized on 80 % of what it is set to.`,

  'supply-backflow/ask-device': () => 'device that keeps its water out of the building’s',
  'supply-backflow/not-known': ({ machine }) =>
    `Say what keeps the water of ${nameWords(machine)} out of the building’s: an air gap or a preventer.`,
  'supply-backflow/air-gap': (of) => `${keepsApart('an air gap', of)}.`,
  'supply-backflow/air-gap-needs': (of, f) =>
    `${keepsApart('an air gap', of)}; over the rim where it would flood and away from walls it needs ${f.length(of.least)} at least.`,
  'supply-backflow/preventer': (of) => `${keepsApart('a backflow preventer', of)}. Have it tested as local code says.`,
  'supply-backflow/none': (of) =>
    `${keepsApart('nothing', of)}. It needs an air gap of its own or a backflow preventer, fitted by a licensed plumber.`,
  'supply-backflow/gap': (of, f) => `${comesOut(of, f)}; ${f.length(of.needed)} is needed.`,
  'supply-backflow/gap-below-least': (of, f) =>
    `${comesOut(of, f)}; never is less than ${f.length(of.least)} enough. Have a licensed plumber see to it.`,
  'supply-backflow/gap-for-narrow-outlet': (of, f) =>
    `${comesOut(of, f)}; an outlet as wide as its pipe needs ${f.length(of.needed)}. See how wide the outlet is: a narrower one needs less.`,
  'supply-air-gap/by-table': () => 'The city table governs: it asks more than twice the opening.',
  'supply-air-gap/by-code': () => 'Twice the opening, an inch at least, governs.',
  'supply-air-gap/where': () =>
    'From the water’s outlet down to the rim over which the machine would flood, where nothing else keeps its water apart. The outlet is taken to be as wide as the machine’s connection; an outlet that is narrower needs less. Within three openings of a wall, or four of a corner, the gap must be larger: see the code itself.',

  'water-hardness/ask': () => 'hardness of the water',
  'water-hardness/as-tested': () =>
    'As calcium carbonate, as tested at the machine: after the softener where there is one. The machine’s own sheet may be stricter.',
  'water-hardness/what': () => 'whether the water needs a softener',
  'water-hardness/within': ({ hardness, least, most }, f) =>
    `The water has ${f.hardness(hardness)} of hardness, within ${f.hardness(least)} to ${f.hardness(most)}: no softener is needed.`,
  'water-hardness/too-hard': ({ hardness, most }, f) =>
    `The water has ${f.hardness(hardness)} of hardness and design guides take ${f.hardness(most)} at most: put a softener before the machine, or delime it often.`,
  'water-hardness/too-soft': ({ hardness, least }, f) =>
    `The water has ${f.hardness(hardness)} of hardness, under ${f.hardness(least)}: so soft it can hurt some equipment; ask the machine’s maker.`,
  'scale-per-year/delime': () =>
    'What part of it stays as scale is not known; the more it is, the more often the machine needs deliming, as its manual says. Delimer is an acid: gloves and goggles, and never with chlorine.',

  'water-per-rack-criteria/what': () => 'how its water stands beside the criteria',
  'water-per-rack-criteria/within': ({ perRack, most }, f) =>
    `Each rack takes ${f.volume(perRack)}, within the ${f.volume(most)} of the published criteria.`,
  'water-per-rack-criteria/more': ({ perRack, most }, f) =>
    `Each rack takes ${f.volume(perRack)}, more than the ${f.volume(most)} of the published criteria: another machine would cost less to run.`,
  'rinse-water-per-rack/data-sheet': () => 'As the data sheet states it.',
  'rinse-water-per-rack/criterion': ({ version, from }) =>
    `Version ${version} of ENERGY STAR, in force from ${from}, for comparison: no rule of the room.`,
  'rinse-water/no-fills': () => 'Rinse water alone, without fillings of the tank.',
  'rinse-water/all-ware': () => 'As if all the ware went through this machine.',
  'water-per-day/filled-once': () => 'The tank is filled once; each time that its water is changed between meals takes as much again.',
  'water-per-year/one-fill-a-day': () =>
    'The tank is counted as filled once a day, the least that cleaning it asks for (food code, from memory); more fillings take more.',

  'spray-use/strong': () => 'A new valve with a spray above 8.0 ozf: 1.28 gpm at most. It counts, as the class that may take most.',
  'spray-use/middle': () => 'A new valve with a spray above 5.0, to 8.0 ozf: 1.20 gpm at most.',
  'spray-use/light': () => 'A new valve with a spray to 5.0 ozf: 1.00 gpm at most.',
  'spray-use/older': () => 'A valve made from 2006 to January 2019: 1.6 gpm at most; before, up to 4.5 gpm.',
  'spray-use/open-time': () =>
    'As if it stood open for 200 min a day, more than which is unusual (EPA, WaterSense at Work); 10 CFR 431.266 bounds the valves. Water at the spray can scald.',

  'sink-bowls/ask-bowls': () => 'bowls of the sink',
  'sink-bowls/ask-count': () => 'number of bowls',
  'sink-bowls/ask-length': () => 'length of a bowl',
  'sink-bowls/ask-width': () => 'width of a bowl',
  'sink-bowls/ask-depth': () => 'depth of a bowl',
  'sink-volume/to-the-rim': () => 'Full to the rim, as county forms count it. The demand for hot water takes each bowl once an hour.',
  'hot-water-demand/as-drawn': () =>
    'Of the fixtures drawn, three meals a day. Each bowl of a three-compartment sink is filled once an hour; where its size is not known, 24 × 24 in for a sink of 72 in or more, else 18 × 18 in.',

  'feed/ask-cold-water': () => 'temperature of the cold water',
  'feed/ask-hot-water': () => 'temperature of the hot water',
  'water-line/ask-connection': () => 'place of the water connection on the machine',
  'water-line/ask-cold-water-stub': () => 'cold-water stub',
  'water-line/ask-hot-water-stub': () => 'hot-water stub',
  'water-line/ask-bore': () => 'inside diameter of the pipe to the machine',
  'water-line/right-angles': () => 'From the nearest stub of its kind, at right angles with the machine, up and down included.',
  'water-speed/while-rinsing': () => 'While the machine rinses. Fast water is loud and knocks when the valve shuts.',
  'water-line-loss/ask-material': () => 'material of the pipe to the machine',
  'water-line-loss/bare-pipe': () => 'While the machine rinses; bends, valves and a hose come on top.',
};

type Params<K extends keyof CheckMessages> = CheckMessages[K];

const rinseHas = ({ machine, pressure }: Params<'rinse-pressure/within'>, where: string, f: Formatter) =>
  `The rinse of ${nameWords(machine)} has ${f.pressure(pressure)} of flow pressure ${where}`;

const range = ({ least, most }: Params<'rinse-pressure/within'>, f: Formatter) => `${f.pressure(least)} to ${f.pressure(most)}`;

const BOUNDS: Readonly<Record<Params<'rinse-pressure/below'>['by'], { by: string; asks: string; allows: string }>> = {
  'data-plate': { by: 'its data plate', asks: 'asks', allows: 'allows' },
  'food-code': { by: 'the food code', asks: 'asks', allows: 'allows' },
  'older-codes': { by: 'the older codes', asks: 'ask', allows: 'allow' },
};

const asksFor = ({ by, bound }: Params<'rinse-pressure/below'>, f: Formatter) =>
  `${BOUNDS[by].by} ${BOUNDS[by].asks} for ${f.pressure(bound)}`;

const allows = ({ by, bound }: Params<'rinse-pressure/above'>, f: Formatter) =>
  `${BOUNDS[by].by} ${BOUNDS[by].allows} ${f.pressure(bound)} at most`;

const findOut = (of: Params<'rinse-pressure/below'>, f: Formatter) =>
  ` at the rinse valve: find out what the line takes, and hold what is left against ${range(of, f)}.`;

const keepsApart = (device: string, { machine }: Params<'supply-backflow/none'>) =>
  sentence(`${device} keeps the water of ${nameWords(machine)} out of the building’s`);

const comesOut = ({ machine, gap }: Pick<Params<'supply-backflow/gap'>, 'machine' | 'gap'>, f: Formatter) =>
  `The water of ${nameWords(machine)} comes out ${f.length(gap)} above the rim where it would flood`;
