import type { RecordUnit, Refusal, RefusalCode } from '../../rules';

/** A refusal as one sentence, in SI and with the names of inputs as formulas have them: what the command line's JSON holds. */
export const refusalSentence = (refusal: Refusal): string => refusalBits(refusal).map(bitText).join('');

/**
 * A piece of that sentence, so that it can be put into other units: text; the name of an input; an input and its value; an amount
 * of a unit, or two from where to where.
 */
export type Bit = string | { input: string; is?: number | string | null } | { amounts: readonly Amount[]; unit: RecordUnit };

/** `shown` is how the sentence writes it; a bound that there is not is null. */
export type Amount = number | string | null;

export const refusalBits = (refusal: Refusal): readonly Bit[] =>
  (SENTENCES[refusal.code] as (about: Refusal['params'], refusal: Refusal) => readonly Bit[])(refusal.params, refusal);

function bitText(bit: Bit): string {
  if (typeof bit === 'string') return bit;
  if ('input' in bit) return bit.is === undefined ? bit.input : `${bit.input} is ${bit.is}`;
  const [from, to] = bit.amounts;
  return `${bit.amounts.length > 1 ? `${from ?? '-Infinity'} to ${to ?? 'Infinity'}` : from} ${bit.unit}`;
}

const name = (input: string): Bit => ({ input });
const of = (value: Amount, unit: RecordUnit): Bit => ({ amounts: [value], unit });
/** The input at fault, and what it is. */
const given = ({ input, value }: Refusal): Bit => ({ input: input ?? '', is: value });
const wire = ({ size, terminal, valueA }: { size: string; terminal: string; valueA: number }): Bit[] => [
  of(size, 'AWG'),
  ` at ${terminal} is `,
  of(valueA, 'A'),
];

const CURVE = 'a fan curve has two points or more, airflow rising from 0 or above, no pressure below 0';
const APART = 'the curves of fan and system do not meet';
const RECORD = 'a record has two points at least, and each comes after the one before it';

const SENTENCES: {
  [Code in RefusalCode]: (about: Extract<Refusal, { code: Code }>['params'], refusal: Refusal) => readonly Bit[];
} = {
  'out-of-range': (_, one) => [
    given(one),
    `; ${one.title.toLowerCase()} holds for `,
    ...(one.unit === null ? [] : [{ amounts: [one.min, one.max], unit: one.unit }]),
  ],
  'not-a-choice': (_, one) => [given(one), `; ${one.title.toLowerCase()} holds for ${(one.choices ?? []).join(', ')}`],
  'not-whole': (_, one) => [given(one), '; it is a whole number'],
  'below-least': (_, one) => [given(one), `; it is ${one.min} or more`],
  'not-above-least': (_, one) => [given(one), `; it is above ${one.min}`],
  'insulation-not-enough': ({ insideC, dewPointC, mostM }) => [
    'insulation of at most ',
    of(mostM, 'm'),
    ' is enough: at ',
    of(insideC, 'C'),
    ' with a dew point of ',
    of(dewPointC, 'C'),
    ' it is not',
  ],
  'duct-too-flat': ({ widthM, heightM, mostAspect }) => [
    `one side is at most ${mostAspect} times the other: `,
    name('widthM'),
    ` is ${widthM}, `,
    { input: 'heightM', is: heightM },
  ],
  'duct-too-fast': ({ airflowM3s, areaM2, mostMs }) => [
    'the velocity is at most ',
    of(mostMs, 'm/s'),
    ': ',
    name('airflowM3s'),
    ` is ${airflowM3s}, `,
    { input: 'areaM2', is: areaM2 },
  ],
  'fan-curve-too-short': ({ points }) => [`${CURVE}: it has ${points}`],
  'fan-curve-out-of-order': ({ point }) => [`${CURVE}: point ${point} is not so`],
  'system-too-free': () => [`${APART}: the system lets through more air than the last point of the curve`],
  'system-too-tight': () => [`${APART}: the system chokes the fan below its first point`],
  'bend-not-known': ({ heightRatio, radiusRatio }) => [
    'a rectangular bend is known at r/W 1.5, at r/W 0.5 from H/W 1 on, and from r/W 1.5 on where it is square: ',
    `H/W is ${heightRatio}, r/W ${radiusRatio}`,
  ],
  'bend-of-pieces-not-held': () => ['bends of straight pieces are known for round ducts and a radius of 1.5 diameters only'],
  'run-loss-not-known': () => ['the loss of the run is not known'],
  'machine-not-in-tables': ({ machine, dishesPerHour, table }) => [
    'the tables are held for door machines of 950 to 2000 dishes an hour and, in 2001, conveyors of 5000 to 9000: ',
    `${machine}, `,
    name('dishesPerHour'),
    ` is ${dishesPerHour}, table ${table}`,
  ],
  'blown-exceeds-taken': ({ intoCavityM3s, totalM3s }) => [
    'no more is blown into a hood than it takes: ',
    name('intoCavityM3s'),
    ` is ${intoCavityM3s}, `,
    name('totalM3s'),
    ` ${totalM3s}`,
  ],
  'drawn-exceeds-exhaust': ({ atMachinesM3s, exhaustM3s }) => [
    'no more is drawn at the machines than in all: ',
    name('atMachinesM3s'),
    ` is ${atMachinesM3s}, `,
    name('exhaustM3s'),
    ` ${exhaustM3s}`,
  ],
  'vapour-boils': ({ vapourPa, pressurePa }) => [
    'the vapour has less pressure than the air: vapour ',
    of(vapourPa, 'Pa'),
    ', air ',
    of(pressurePa, 'Pa'),
  ],
  'above-saturation': ({ humidityRatio, temperatureC, relativeHumidity }) => [
    'air holds at most what saturates it: ',
    name('humidityRatio'),
    ` ${humidityRatio} at `,
    of(temperatureC, 'C'),
    ` is ${(100 * relativeHumidity).toFixed(1)} %`,
  ],
  'wet-bulb-not-between': (_, one) => ['a wet bulb is between dry air and the dry bulb: ', given(one)],
  'nothing-to-mix': () => [name('airflowM3s'), ' is 0 in both streams; there is nothing to mix'],
  'supply-not-drier': ({ supplyRatio, highestRatio }) => [
    'the supply air is drier than the room may be: ',
    name('supplyRatio'),
    ` is ${supplyRatio}, `,
    name('highestRatio'),
    ` ${highestRatio}`,
  ],
  'pile-never-goes': ({ afterPerH, servedPerH }) => [
    name('afterPerH'),
    ` is ${afterPerH} and `,
    name('servedPerH'),
    ` ${servedPerH}; after the rush fewer racks come than are washed, or the pile never goes`,
  ],
  'queue-without-end': ({ load }) => [
    name('arrivalsPerH'),
    ' times ',
    name('serviceS'),
    ` is a load of ${load.toFixed(2)}; the load is below 1, or the queue grows without end`,
  ],
  'cycle-too-short': ({ cycleS, leastS }) => [
    name('washS'),
    ', ',
    name('rinseS'),
    ', ',
    name('dwellS'),
    ' and ',
    name('loadS'),
    ' are ',
    of(cycleS, 's'),
    ' together; a cycle takes at least ',
    of(leastS, 's'),
  ],
  'nominal-size-not-held': (_, one) => [
    given(one),
    '; nominal sizes of 2, 3 and 4 in are held, at ⅛ in/ft 3 and 4 in only; for others, the code itself',
  ],
  'flow-not-held': (_, one) => [given(one), '; intermittent flows are held up to 15 gpm; above, the code itself'],
  'too-few-points': ({ points }, { input }) => [name(input ?? ''), ` has ${points} points; a cycle has two at least`],
  'record-lengths-differ': ({ times, temperatures }) => [
    name('atS'),
    ' and ',
    name('tempsC'),
    ` differ in length: ${times}, ${temperatures}; ${RECORD}`,
  ],
  'record-too-short': ({ points }) => [`the record has ${points} points; ${RECORD}`],
  'record-goes-back': ({ fromS, toS }) => ['the record goes back from ', of(fromS, 's'), ' to ', of(toS, 's'), `; ${RECORD}`],
  'lists-differ-in-length': ({ units, flows }) => [name('units'), ' and ', name('eachM3S'), ` differ in length: ${units}, ${flows}`],
  'pipe-too-fast': ({ speedMs, mostMs }) => [
    name('flowM3S'),
    ' in ',
    name('boreM'),
    ' makes ',
    of(speedMs.toFixed(1), 'm/s'),
    '; the speed is at most ',
    of(mostMs, 'm/s'),
  ],
  'ampacity-not-held': ({ size, terminal }) => [`size ${size} at terminal ${terminal} is for the code itself`],
  'wire-area-not-held': (_, one) => [given(one), '; its area is not held'],
  'breaker-not-held': ({ currentA, neededA, mostA }) => [
    name('currentA'),
    ` is ${currentA}, so the device carries `,
    of(neededA.toFixed(1), 'A'),
    '; ratings up to ',
    of(mostA, 'A'),
    ' are held; above, the code itself',
  ],
  'wire-not-held': ({ breakerA, size, terminal }) => [
    { input: 'breakerA', is: breakerA },
    '; for ',
    of(size, 'AWG'),
    ` at ${terminal} see the code itself`,
  ],
  'no-wire-held': (_, one) => [given(one), '; a wire for it is for the code itself'],
  'ampacity-differs-from-code': (about) => [...wire(about), '; the table of the code has ', of(about.heldA, 'A')],
  'ampacity-not-above-thinner': (about) => [...wire(about), '; a thinner wire carries ', of(about.thinnerA, 'A')],
  'ampacity-below-cooler': (about) => [...wire(about), '; at 60C it carries ', of(about.coolerA, 'A')],
  'tank-not-held': ({ mostGallons }) => [`the table ends at tanks of ${mostGallons} gal; see the code itself`],
  'fixture-table-ends': ({ mostGallons }) => [`the fixture table ends at tanks of ${mostGallons} gal; see the code itself`],
  'lifting-limit-zero': () => ['the limit is 0, nobody should lift so'],
  'lifting-too-long': () => ['the equation holds for at most 8 h of lifting'],
  'machine-not-found': () => ['there is no such machine'],
  'no-machine': () => ['there is no machine'],
  'no-rack-in-year': () => ['no rack is washed in the year'],
  'no-turning-space': () => ['neither a circle of 60 in nor a T of three arms of 36 in is free within 5 ft of the operator'],
  'peak-fills-day': () => ['the machine is on no longer than the peak lasts'],
  'peak-racks-not-known': () => ['the racks of the peak are not known'],
  'drain-too-far': () => ['the drain is more than 5 ft away'],
  'drain-without-trap': () => ['the drain has no trap'],
  'trap-not-vented': () => ['the trap is not vented'],
  'level-waste-too-long': () => ['more than 30 in run on the level'],
  'waste-too-long': () => ['more than 54 in in all'],
  'wall-too-near': ({ openings, walls }) => [
    `within ${openings} openings of ${walls === 'one' ? 'a wall' : 'a corner'} the air gap must be larger: see the code itself`,
  ],
  'gap-not-closed-and-sealed': () => ['no room to clean, and not both closed to 1/32 in and sealed'],
  'gap-not-closed-nor-sealed': () => ['neither room to clean, nor closed to 1/32 in, nor sealed'],
  'way-too-narrow': () => ['narrower than 32 in'],
  'narrow-places-too-near': () => ['two narrow places are less than 48 in apart'],
  'narrow-for-too-long': () => ['narrower than 36 in for more than 24 in'],
  'half-turn-too-narrow': () => ['neither 42, 48 and 42 in nor 36, 60 and 36 in'],
  'bounds-movable': () => ['its bounds can be moved'],
  'area-too-large': () => ['it has 1000 ft² or more'],
  'pressure-outside-plate': ({ side }) => [`${side} for the data plate`],
  'pressure-outside-rule': ({ side }) => [`${side} for the rule`],
  'gauge-missing': () => ['the data plate gives a flow pressure and there is no gauge to read it'],
  'dosing-not-automatic': () => ['it is not given by the machine itself'],
  'dosing-unnoticed': () => ['nobody sees or hears when it does not come'],
};
