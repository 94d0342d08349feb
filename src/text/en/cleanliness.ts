import type { BacksplashMessages } from '../../topics/cleanliness/checks/backsplash';
import type { CeilingMessages } from '../../topics/cleanliness/checks/ceiling';
import type { ChemicalsDosedMessages } from '../../topics/cleanliness/checks/chemicals-dosed';
import type { CleanOffFloorMessages } from '../../topics/cleanliness/checks/clean-off-floor';
import type { CleanableBelowMessages } from '../../topics/cleanliness/checks/cleanable-below';
import type { DryingPlacesMessages } from '../../topics/cleanliness/checks/drying-places';
import type { FloorDrainsMessages } from '../../topics/cleanliness/checks/floor-drains';
import type { GapsCleanableMessages } from '../../topics/cleanliness/checks/gaps-cleanable';
import type { HandSinkNearMessages } from '../../topics/cleanliness/checks/hand-sink-near';
import type { ManualSanitizingMessages } from '../../topics/cleanliness/checks/manual-sanitizing';
import type { PreRinseSizeMessages } from '../../topics/cleanliness/checks/pre-rinse-size';
import type { RimMessages } from '../../topics/cleanliness/checks/rim';
import type { ScupperMessages } from '../../topics/cleanliness/checks/scupper';
import type { ThreeCompartmentsMessages } from '../../topics/cleanliness/checks/three-compartments';
import type { WasteBinsMessages } from '../../topics/cleanliness/checks/waste-bins';
import type { Formatter } from '../../units';
import type { Wording } from '../wording';
import { nameWords } from './names';
import { count, sentence } from './words';

type Messages = BacksplashMessages &
  CeilingMessages &
  ChemicalsDosedMessages &
  CleanOffFloorMessages &
  CleanableBelowMessages &
  DryingPlacesMessages &
  FloorDrainsMessages &
  GapsCleanableMessages &
  HandSinkNearMessages &
  ManualSanitizingMessages &
  PreRinseSizeMessages &
  RimMessages &
  ScupperMessages &
  ThreeCompartmentsMessages &
  WasteBinsMessages;

type Params<K extends keyof Messages> = Messages[K];

/** The words of cleanliness: what keeps its water in, what can be cleaned, where ware dries, sinks and bins. */
export const cleanliness: Wording<Messages> = {
  'backsplash/high-enough': (of, f) => sentence(`${backsplash(of, f)}; ${f.length(of.wanted)} is wanted.`),
  'backsplash/too-low': (of, f) => sentence(`${backsplash(of, f)}; ${f.length(of.wanted)} keeps splash off the wall.`),
  'backsplash/repair-raise-backsplash': ({ table, wanted }, f) => `Make the backsplash of ${nameWords(table)} ${f.length(wanted)} high`,

  'ceiling/height-unknown': () => 'Measure the finished ceiling above the floor and say it.',
  'ceiling/ask-height': () => 'height of the ceiling',
  'ceiling/too-low': ({ height, least }, f) => `The ceiling is ${f.length(height)} high; ${f.length(least)} is needed over an exit route.`,
  'ceiling/below-guide': ({ height, guide }, f) =>
    `The ceiling is ${f.length(height)} high; a guide for military kitchens has ${f.length(guide)}. See that steam is drawn off.`,
  'ceiling/high-enough': ({ height, least }, f) => `The ceiling is ${f.length(height)} high; ${f.length(least)} is needed.`,
  'ceiling/finish-unknown': () => 'Say whether the ceiling is smooth, washable and takes up no water.',
  'ceiling/ask-finish': () => 'ceiling: smooth and washable or not',
  'ceiling/washable': () => 'The ceiling is smooth and can be washed.',
  'ceiling/not-washable': () => 'The ceiling takes up steam or can’t be washed. Have it smooth, washable and non-absorbent.',

  'chemicals-dosed/calls': ({ machine, chemicals }) =>
    sentence(
      `${nameWords(machine)} calls for its detergent by a signal; see when it is set up that ${CHEMICALS[chemicals].what} can be seen to come, or an alarm sounds.`,
    ),
  'chemicals-dosed/no-signal': ({ machine, chemicals }) => {
    const { what, are } = CHEMICALS[chemicals];
    return sentence(
      `the data sheet of ${nameWords(machine)} has no signal that calls for detergent: ask its maker how ${what} ${are} dosed without a hand, and how one sees or hears that a can is empty.`,
    );
  },

  'clean-off-floor/unknown': ({ holder }) => `Say how high the lowest shelf of ${nameWords(holder)} is.`,
  'clean-off-floor/ask-lowest-shelf': ({ holder }) => `height of the lowest shelf of ${nameWords(holder)}`,
  'clean-off-floor/high-enough': ({ holder, height, least }, f) =>
    sentence(`on ${nameWords(holder)} clean ware stands ${f.length(height)} above the floor; ${f.length(least)} is needed.`),
  'clean-off-floor/too-low': ({ holder, height, missing }, f) =>
    sentence(
      `on ${nameWords(holder)} clean ware stands ${f.length(height)} above the floor, ${f.length(missing)} too low. Raise the lowest shelf.`,
    ),

  'cleanable-below/unknown': ({ item }) => `Say how much is free under ${nameWords(item)}.`,
  'cleanable-below/ask-free-height': ({ item }) => `free height under ${nameWords(item)}`,
  'cleanable-below/on-floor': ({ item }) => sentence(`${nameWords(item)} stands on the floor: it must be sealed to it all around.`),
  'cleanable-below/enough': ({ item, free, least }, f) =>
    sentence(`under ${nameWords(item)} ${f.length(free)} is free; ${f.length(least)} is needed to clean there.`),
  'cleanable-below/too-little': ({ item, free, missing }, f) =>
    sentence(
      `under ${nameWords(item)} ${f.length(free)} is free, ${f.length(missing)} too little to clean there. Give it longer legs, or seal it to the floor.`,
    ),

  'drying-places/enough': (places) => sentence(`${dryingPlaces(places)}.`),
  'drying-places/too-few': (places) => sentence(`${dryingPlaces(places)}. Lengthen the table or add a rack to dry on.`),

  'floor-drains/cove-unknown': () => 'Say whether the floor is coved up the wall and sealed.',
  'floor-drains/ask-cove': () => 'floor: coved and sealed or not',
  'floor-drains/coved': () => 'The floor is coved up the wall and sealed.',
  'floor-drains/not-coved': () => 'The floor is not coved and sealed at the wall. Have it coved: water goes into the joint.',
  'floor-drains/drained': () => 'The floor has a drain to fall to.',
  'floor-drains/no-drain': () => 'The floor has no drain. Draw the one it falls to, or have one built.',
  'floor-drains/fall-unknown': () => 'Say how much the floor falls to its drain.',
  'floor-drains/ask-fall': () => 'fall of the floor',
  'floor-drains/level': () => 'The floor is level: it must be graded to its drain.',
  'floor-drains/falls': ({ slope }, f) => `The floor falls ${f.slope(slope)} to its drain.`,
  'floor-drains/less-than-usual': ({ slope, usual }, f) =>
    `The floor falls ${f.slope(slope)} to its drain; ${f.slope(usual)} is the least that is usual.`,
  'floor-drains/less-than-some-ask': ({ slope, asked }, f) =>
    `The floor falls ${f.slope(slope)} to its drain; some counties ask for ${f.slope(asked)}.`,
  'floor-drains/flat-enough': ({ slope, most }, f) =>
    `The floor falls ${f.slope(slope)}; up to ${f.slope(most)} a wheelchair and a cart stand still.`,
  'floor-drains/too-steep': ({ slope, most }, f) =>
    `The floor falls ${f.slope(slope)}; above ${f.slope(most)} a wheelchair or a cart rolls off. Let it fall less.`,

  'gaps-cleanable/against': ({ item, to }) => sentence(`${nameWords(item)} stands against ${neighbour(to)}.`),
  'gaps-cleanable/unknown': (left, f) => sentence(`${gapLeft(left, f)}. Say whether it is sealed.`),
  'gaps-cleanable/ask-sealed': ({ item }) => `joints of ${nameWords(item)}: sealed or not`,
  'gaps-cleanable/sealed': (left, f) => sentence(`${gapLeft(left, f)}, sealed.`),
  'gaps-cleanable/open': ({ wanted, mayRoll, ...left }, f) =>
    sentence(
      `${gapLeft(left, f)}: too little to clean, and not sealed. Seal it, or leave ${f.length(wanted)}${mayRoll ? ', or let it roll away' : ''}.`,
    ),

  'hand-sink-near/none': () =>
    'No hand sink is drawn. Give the room one that is convenient to whoever handles clean ware; a sink for ware does not count.',
  'hand-sink-near/drawn': () => 'Hands are washed at a sink of their own.',
  'hand-sink-near/what': () => 'how far the hand sink is',
  'hand-sink-near/near': (away, f) => `${handSink(away, f)}; ${f.length(away.most)} is the most where law sets a distance.`,
  'hand-sink-near/too-far': (away, f) =>
    `${handSink(away, f)}; ${f.length(away.most)} is the most where law sets a distance. Bring it nearer.`,
  'hand-sink-near/barred': (away, f) =>
    `${handSink(away, f)}, and something stands between: on foot it may be more than ${f.length(away.most)}. Measure the way.`,

  'manual-sanitizing/way-unknown': ({ sink, ask }, _f, tell) =>
    `To know whether ${nameWords(sink)} needs water of its own heat, say the ${tell(ask)}.`,
  'manual-sanitizing/ask-bowls': () => 'bowls and boards of the sink, and how it sanitises',
  'manual-sanitizing/ask-way': () => 'way in which it sanitises',
  'manual-sanitizing/own-heater': ({ sink, stayS, leastC, heaterW }, f) =>
    sentence(
      `the last bowl of ${nameWords(sink)} has ${heater(heaterW, f)}; ware stays ${stayS} s in it at ${f.temperature(leastC)}. Water so hot burns: baskets with long handles.`,
    ),
  'manual-sanitizing/water-unknown': ({ sink, ask }, _f, tell) =>
    `To know whether the hot water sanitises in ${nameWords(sink)}, say the ${tell(ask)}.`,
  'manual-sanitizing/ask-hot-water': () => 'temperature of the hot water',
  'manual-sanitizing/hot-enough': (water, f) => sentence(`${hotWater(water, f)}. Water so hot burns: mix it down at every other tap.`),
  'manual-sanitizing/too-cold': (water, f) =>
    sentence(`${hotWater(water, f)}. Have the bowl fitted with ${heater(water.heaterW, f)}, or sanitise with chemicals.`),
  'manual-sanitizing/heater-unknown': (water, f) =>
    sentence(`${hotWater(water, f)}. Say whether the bowl has ${heater(water.heaterW, f)}.`),
  'manual-sanitizing/ask-heater': () => 'heater in the bowl that sanitises',

  'pre-rinse-size/large-enough': ({ fitting, size, way, wanted }, f) =>
    sentence(`${nameWords(fitting)} is ${f.length(size)} ${WAYS[way]}; ${f.length(wanted)} is wanted.`),
  'pre-rinse-size/too-small': ({ fitting, size, way, missing }, f) =>
    sentence(`${nameWords(fitting)} is ${f.length(size)} ${WAYS[way]}, ${f.length(missing)} less than is wanted. Take a larger one.`),
  'pre-rinse-size/rack-fits': ({ sink, rack }, f) => sentence(`a rack of ${f.length(rack)} finds room in the bowl of ${nameWords(sink)}.`),
  'pre-rinse-size/slide-unknown': (bowl, f) => sentence(`${bowlAndRack(bowl, f)}: say how wide the rack slide over it is, 0 for none.`),
  'pre-rinse-size/ask-slide': () => 'rack slide over the bowl',
  'pre-rinse-size/no-slide': (bowl, f) =>
    sentence(`${bowlAndRack(bowl, f)}, with no rack slide over it. Have one of ${f.length(bowl.wanted)} made, or take a larger bowl.`),
  'pre-rinse-size/slide-too-narrow': (bowl, f) =>
    sentence(
      `${bowlAndRack(bowl, f)}; its rack slide of ${f.length(bowl.slide)} is ${f.length(bowl.missing)} too narrow. Have it made wider.`,
    ),
  'pre-rinse-size/slide-carries': (bowl, f) => sentence(`${bowlAndRack(bowl, f)}; a rack slide of ${f.length(bowl.slide)} carries it.`),
  'pre-rinse-size/trough-depth-unknown': () => 'Say how deep the scrap trough is at its shallow end, 0 for a plain opening.',
  'pre-rinse-size/ask-trough-depth': () => 'depth of the scrap trough',
  'pre-rinse-size/trough-too-shallow': ({ depth, wanted }, f) =>
    `The scrap trough is ${f.length(depth)} deep at its shallow end; from ${f.length(wanted)} on, scraps are washed along it. Have it made deeper.`,
  'pre-rinse-size/trough-deep-enough': ({ depth, wanted }, f) =>
    `The scrap trough is ${f.length(depth)} deep at its shallow end; ${f.length(wanted)} is wanted.`,
  'pre-rinse-size/trough-fall-unknown': () => 'Say how much the scrap trough falls to where it empties.',
  'pre-rinse-size/ask-trough-fall': () => 'fall of the scrap trough',
  'pre-rinse-size/trough-too-flat': ({ slope, wanted }, f) =>
    `${troughFalls(slope, f)}; ${f.slope(wanted)} carries scraps along. Have it fall more.`,
  'pre-rinse-size/trough-steep-enough': ({ slope, wanted }, f) => `${troughFalls(slope, f)}; ${f.slope(wanted)} is wanted.`,
  'pre-rinse-size/covers-unknown': () => 'Say how many covers the scrap trough has.',
  'pre-rinse-size/ask-covers': () => 'number of covers of the scrap trough',
  'pre-rinse-size/too-few-covers': (trough, f) => `${tooFew(trough, 'cover', f)}, ${coversWanted(trough, f)}.`,
  'pre-rinse-size/covers-enough': (trough, f) => `${troughHas(trough, 'cover', f)}: ${coversWanted(trough, f)}.`,
  'pre-rinse-size/inlets-unknown': () => 'Say how many water inlets the scrap trough has.',
  'pre-rinse-size/ask-inlets': () => 'number of water inlets of the scrap trough',
  'pre-rinse-size/too-few-inlets': (trough, f) => `${tooFew(trough, 'water inlet', f)}, ${inletsWanted(trough, f)}.`,
  'pre-rinse-size/inlets-enough': (trough, f) => `${troughHas(trough, 'water inlet', f)}: ${inletsWanted(trough, f)}.`,

  'rim/unknown': ({ table }) => `Say how high the rim of ${nameWords(table)} is.`,
  'rim/ask-height': () => 'height of the rim',
  'rim/high-enough': (of, f) => sentence(`${rim(of, f)}; ${f.length(of.wanted)} is wanted.`),
  'rim/too-low': (of, f) => sentence(`${rim(of, f)}; ${f.length(of.wanted)} keeps the water on it.`),

  'scupper/not-needed': ({ table }) => sentence(`the water of ${nameWords(table)} runs into its sink, none to the machine.`),
  'scupper/unknown': ({ table }) => `Say whether ${nameWords(table)} has a scupper before the machine.`,
  'scupper/ask-scupper': () => 'scupper before the machine, or none',
  'scupper/drawn-off': ({ table }) => sentence(`${nameWords(table)} has a scupper before the machine, which takes its soil water.`),
  'scupper/into-machine': ({ table }) =>
    sentence(
      `${nameWords(table)} drains its soil water into the machine. Have a scupper made across the deck before it, with a drain of its own.`,
    ),

  'three-compartments/bowls-unknown': ({ sink }) => `Say the bowls and boards of ${nameWords(sink)}.`,
  'three-compartments/ask-bowls': () => 'bowls and boards of the sink',
  'three-compartments/field-unknown': ({ sink, field }) => `Say the ${FIELDS[field]} of ${nameWords(sink)}.`,
  'three-compartments/ask-field': ({ field }) => FIELDS[field],
  'three-compartments/enough': (counted) => sentence(`${sinkHas(counted)}.`),
  'three-compartments/too-few': (counted) => sentence(`${sinkHas(counted)}. Take one that has them.`),
  'three-compartments/large-enough': (sized, f) => sentence(`${sinkSize(sized, f)}.`),
  'three-compartments/too-small': (sized, f) => sentence(`${sinkSize(sized, f)}. See that the largest item finds room.`),

  'waste-bins/none': () => 'No bin is drawn. Give the soiled side one.',
  'waste-bins/drawn': ({ bins }) => `The room has ${count(bins, 'bin')}.`,
  'waste-bins/near': ({ from, distance }, f) => sentence(`a bin stands ${f.length(distance)} from ${nameWords(from)}.`),
  'waste-bins/too-far': ({ from, distance, most }, f) =>
    sentence(`the nearest bin is ${f.length(distance)} from ${nameWords(from)}. Stand one beside it, within ${f.length(most)}.`),
};

const backsplash = ({ table, height }: Params<'backsplash/too-low'>, f: Formatter) =>
  `${nameWords(table)} ${height === 0 ? 'has no backsplash' : `has a backsplash of ${f.length(height)}`}`;

const CHEMICALS: Readonly<Record<Params<'chemicals-dosed/calls'>['chemicals'], { what: string; are: string }>> = {
  detergent: { what: 'detergent', are: 'is' },
  'detergent-and-sanitizer': { what: 'detergent and sanitiser', are: 'are' },
};

/** `2 racks can dry on the clean table and no racks on a shelf of the storage; 3 places are wanted after hot water`. */
const dryingPlaces = ({ table, onTable, onShelf, wanted, after }: Params<'drying-places/enough'>) =>
  `${count(onTable, 'rack')} can dry on ${nameWords(table)} and ${count(onShelf, 'rack')} on a shelf of the storage; ${wanted} places are wanted after ${after === 'hot-water' ? 'hot water' : 'chemicals'}`;

/** A column beside an item is a certain one. */
const neighbour = (name: Params<'gaps-cleanable/against'>['to']) => (name.kind === 'column' ? 'the column' : nameWords(name));

const gapLeft = ({ item, side, width, to }: Params<'gaps-cleanable/unknown'>, f: Formatter) =>
  `${side === 'back' ? 'behind' : `at the ${side} of`} ${nameWords(item)} a gap of ${f.length(width)} is left to ${neighbour(to)}`;

const handSink = ({ distance }: Params<'hand-sink-near/near'>, f: Formatter) =>
  `The hand sink is ${f.length(distance)} from the operator, straight`;

const hotWater = ({ sink, waterC, stayS, leastC }: Params<'manual-sanitizing/hot-enough'>, f: Formatter) =>
  `hot water comes at ${f.temperature(waterC)}; ware in the last bowl of ${nameWords(sink)} stays ${stayS} s at ${f.temperature(leastC)}`;

const heater = (powerW: number | null, f: Formatter) =>
  powerW === null ? 'a heater of its own' : `a heater of its own, ${f.power(powerW)} for one filling an hour`;

const WAYS: Readonly<Record<Params<'pre-rinse-size/too-small'>['way'], string>> = {
  'shorter-side': 'on its shorter side',
  depth: 'deep',
};

const bowlAndRack = ({ sink, width, rack }: Params<'pre-rinse-size/slide-unknown'>, f: Formatter) =>
  `the bowl of ${nameWords(sink)} is ${f.length(width)} wide and a rack ${f.length(rack)}`;

const troughFalls = (slope: number, f: Formatter) =>
  slope === 0 ? 'The scrap trough is level' : `The scrap trough falls ${f.slope(slope)}`;

type Trough = Params<'pre-rinse-size/inlets-enough'>;

const troughHas = ({ length, has }: Trough, one: string, f: Formatter) =>
  `The scrap trough is ${f.length(length)} long and has ${count(has, one)}`;

const tooFew = (trough: Trough, one: string, f: Formatter) =>
  `${troughHas(trough, one, f)}; ${count(trough.wanted, one)} ${trough.wanted === 1 ? 'is' : 'are'} wanted`;

const coversWanted = ({ coverLength, stretch }: Params<'pre-rinse-size/covers-enough'>, f: Formatter) =>
  `one of ${f.length(coverLength)} to each ${f.length(stretch)}`;

const inletsWanted = ({ stretch }: Trough, f: Formatter) => `the first at its shallow end, the next after ${f.length(stretch)} at most`;

const rim = ({ table, height }: Params<'rim/too-low'>, f: Formatter) =>
  `${nameWords(table)} has ${height === 0 ? 'no rim' : `a rim of ${f.length(height)}`}`;

const FIELDS: Readonly<Record<Params<'three-compartments/ask-field'>['field'], string>> = {
  count: 'number of bowls',
  length: 'length of a bowl',
  width: 'width of a bowl',
  depth: 'depth of a bowl',
  leftBoard: 'length of the left drainboard',
  rightBoard: 'length of the right drainboard',
};

const sinkHas = ({ sink, of, has, needed }: Params<'three-compartments/enough'>) =>
  `${nameWords(sink)} has ${count(has, of)}; ${needed} are needed`;

const SINK_SIZES: Readonly<Record<Params<'three-compartments/too-small'>['of'], { are: (sink: string) => string; way: string }>> = {
  'bowl-size': { are: (sink) => `the bowls of ${sink} are`, way: 'wide' },
  'bowl-depth': { are: (sink) => `the bowls of ${sink} are`, way: 'deep' },
  'board-length': { are: (sink) => `the shorter drainboard of ${sink} is`, way: 'long' },
};

const sinkSize = ({ sink, of, size, usual }: Params<'three-compartments/too-small'>, f: Formatter) =>
  `${SINK_SIZES[of].are(nameWords(sink))} ${f.length(size)} ${SINK_SIZES[of].way}; ${f.length(usual)} is usual`;
