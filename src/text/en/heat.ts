import type { BoosterEnoughMessages } from '../../topics/heat/checks/booster-enough';
import type { BoosterNearMessages } from '../../topics/heat/checks/booster-near';
import type { HandSinkWaterMessages } from '../../topics/heat/checks/hand-sink-water';
import type { HeatUnitsMessages } from '../../topics/heat/checks/heat-units';
import type { HeaterEnoughMessages } from '../../topics/heat/checks/heater-enough';
import type { IdleCriteriaMessages } from '../../topics/heat/checks/idle-criteria';
import type { RinseTemperatureMessages } from '../../topics/heat/checks/rinse-temperature';
import type { SupplyTemperatureMessages } from '../../topics/heat/checks/supply-temperature';
import type { ThermometersMessages } from '../../topics/heat/checks/thermometers';
import type { WashTemperatureMessages } from '../../topics/heat/checks/wash-temperature';
import type { BoosterPowerNeededMessages } from '../../topics/heat/figures/booster-power-needed';
import type { FirstHeatUpMessages } from '../../topics/heat/figures/first-heat-up';
import type { HeatUnitsFigureMessages } from '../../topics/heat/figures/heat-units';
import type { HeaterNeededMessages } from '../../topics/heat/figures/heater-needed';
import type { RecoveredHeatMessages } from '../../topics/heat/figures/recovered-heat';
import type { RinseEnergyPerRackMessages } from '../../topics/heat/figures/rinse-energy-per-rack';
import type { RunningCostMessages } from '../../topics/heat/figures/running-cost';
import type { SanitizingHeaterMessages } from '../../topics/heat/figures/sanitizing-heater';
import type { HeatAskMessages } from '../../topics/heat/figures/support/heatAsks';
import type { RinseHeatMessages } from '../../topics/heat/figures/support/rinseHeat';
import type { YearEnergyMessages } from '../../topics/heat/figures/support/yearEnergy';
import type { TankHeatUpMessages } from '../../topics/heat/figures/tank-heat-up';
import type { Formatter } from '../../units';
import type { Wording } from '../wording';
import { nameWords } from './names';
import { sentence } from './words';

/** The words of heat: temperatures, booster, water heater, energy and its cost. */
export const heat: Wording<
  HeatAskMessages &
    WashTemperatureMessages &
    RinseTemperatureMessages &
    SupplyTemperatureMessages &
    ThermometersMessages &
    BoosterEnoughMessages &
    BoosterNearMessages &
    HeaterEnoughMessages &
    IdleCriteriaMessages &
    HeatUnitsMessages &
    HandSinkWaterMessages &
    HeaterNeededMessages &
    SanitizingHeaterMessages &
    RinseEnergyPerRackMessages &
    RecoveredHeatMessages &
    BoosterPowerNeededMessages &
    RinseHeatMessages &
    TankHeatUpMessages &
    FirstHeatUpMessages &
    HeatUnitsFigureMessages &
    YearEnergyMessages &
    RunningCostMessages
> = {
  'heat/ask-booster': () => 'power of the booster',
  'heat/ask-water-temperature': ({ water }) => `temperature of the ${water} water`,
  'heat/ask-water-heating': () => 'way in which the water is heated',

  'wash-temperature/warm': ({ machine, washC, leastC }, f) =>
    `The wash of ${nameWords(machine)} is at least ${f.temperature(washC)}; the food code asks for ${f.temperature(leastC)}.`,
  'wash-temperature/cool': ({ machine, washC, leastC }, f) =>
    `The data sheet of ${nameWords(machine)} has its wash at ${f.temperature(washC)} and the food code asks for ${f.temperature(leastC)}: set it higher, or take another machine.`,

  'rinse-temperature/within': (rinse, f) =>
    `${rinseWords(rinse, f)}; the food code asks for ${f.temperature(rinse.leastC)} to ${f.temperature(rinse.mostC)}.`,
  'rinse-temperature/cool': (rinse, f) =>
    `${rinseWords(rinse, f)} and the food code asks for ${f.temperature(rinse.leastC)}: it does not sanitise; set the booster higher, or take another machine.`,
  'rinse-temperature/steams': (rinse, f) =>
    `${rinseWords(rinse, f)} and the food code allows ${f.temperature(rinse.mostC)} at most: it turns to steam on the way; set the booster lower.`,

  'supply-temperature/ask-feed': () => 'water that it is connected to',
  'supply-temperature/feed-unknown': ({ machine }) =>
    `To know whether ${nameWords(machine)} has the right water, say the water that it is connected to.`,
  'supply-temperature/right-feed': ({ machine, feed }) =>
    `${sentence(nameWords(machine))} is connected to ${feed} water, for which it is made.`,
  'supply-temperature/made-for-cold': ({ machine }) =>
    `${sentence(nameWords(machine))} is made for cold water and is connected to hot: it wins back no heat, and its vapour goes into the room. Connect it to cold water.`,
  'supply-temperature/made-for-hot': ({ machine, sanitizing }) =>
    `${sentence(nameWords(machine))} is made for hot water and is connected to cold: ${TOO_COOL[sanitizing]}. Connect it to hot water.`,
  'supply-temperature/repair-connect-to': ({ feed }) => `Connect it to ${feed} water`,
  'supply-temperature/unknown': ({ machine, ask }, _f, tell) =>
    `To know whether it is warm enough for ${nameWords(machine)}, say the ${tell(ask)}.`,
  'supply-temperature/cool': ({ machine, feed, comesC, neededC, sanitizing }, f) =>
    `${sentence(feed)} water comes at ${f.temperature(comesC)} and ${nameWords(machine)} needs ${f.temperature(neededC)} by its data sheet: have the water made hotter, or ${TOO_COOL[sanitizing]}.`,
  'supply-temperature/under-guide': ({ machine, feed, comesC, guideC }, f) =>
    `${sentence(feed)} water comes at ${f.temperature(comesC)}, enough for the data sheet of ${nameWords(machine)}; design guides ask for ${f.temperature(guideC)}, with which the booster has less to do.`,
  'supply-temperature/warm': ({ machine, feed, comesC, neededC, scalds }, f) =>
    `${sentence(feed)} water comes at ${f.temperature(comesC)}; ${nameWords(machine)} needs ${f.temperature(neededC)}${scalds ? ', and at this heat it scalds' : ''}.`,

  'thermometers/ask': () => 'thermometers in its tanks and at its rinse',
  'thermometers/unknown': ({ machine }) => `Say whether ${nameWords(machine)} has a thermometer in each tank and at its final rinse.`,
  'thermometers/has': ({ machine }) => sentence(`${nameWords(machine)} has a thermometer in each tank and at its final rinse.`),
  'thermometers/lacks': ({ machine }) =>
    sentence(
      `${nameWords(machine)} has no thermometer in each tank and at its final rinse. Take one that has, or have its maker fit them.`,
    ),

  'booster-enough/keeps-up': () => 'whether the booster keeps up',
  'booster-enough/enough': (compared, f) => `${boosterWords(compared, f)}.`,
  'booster-enough/too-small': (compared, f) =>
    `${boosterWords(compared, f)}: the rinse waits in each cycle and fewer racks are done. Feed it hotter water, or take a larger booster.`,

  'booster-near/ask-place': () => 'place of the booster',
  'booster-near/place-unknown': ({ machine }) => `Say whether the booster of ${nameWords(machine)} is in it or stands apart.`,
  'booster-near/ask-way': () => 'way of the pipe from the booster',
  'booster-near/way-unknown': ({ machine }) => `Say how long the pipe is from the booster of ${nameWords(machine)}.`,
  'booster-near/near': ({ machine, way, most }, f) =>
    `The pipe from the booster of ${nameWords(machine)} is ${f.length(way)} long; ${f.length(most)} is usual at most.`,
  'booster-near/far': ({ machine, way, most }, f) =>
    `The pipe from the booster of ${nameWords(machine)} is ${f.length(way)} long; usually it is ${f.length(most)} at most. Set the booster nearer: what cools in the pipe goes into the rinse.`,
  'booster-near/ask-floor': () => 'free height under the booster',
  'booster-near/floor-unknown': ({ machine }) => `Say how much is free under the booster of ${nameWords(machine)}.`,
  'booster-near/off-floor': ({ machine, free, least }, f) =>
    `Under the booster of ${nameWords(machine)} ${f.length(free)} is free; ${f.length(least)} is wanted to clean there.`,
  'booster-near/low': ({ machine, free, missing }, f) =>
    `Under the booster of ${nameWords(machine)} ${f.length(free)} is free, ${f.length(missing)} less than is wanted to clean there. Hang it higher, or give it legs.`,
  'booster-near/ask-wall': () => 'booster: held off the wall or not',
  'booster-near/wall-unknown': ({ machine }) => `Say whether the booster of ${nameWords(machine)} is held off the wall.`,
  'booster-near/off-wall': ({ machine }) => `A hand comes behind the booster of ${nameWords(machine)}: it is held off the wall.`,
  'booster-near/at-wall': ({ machine }) => `No hand comes behind the booster of ${nameWords(machine)}: hold it off the wall.`,

  'heater-enough/large-enough': () => 'whether the water heater is large enough',
  'heater-enough/ask-power': () => 'power of the water heater',
  'heater-enough/enough': (compared, f) => `${heaterWords(compared, f)}.`,
  'heater-enough/too-small': (compared, f) =>
    `${heaterWords(compared, f)}: have a larger heater or ${compared.isInstant ? '' : 'more '}hot water in store.`,
  'heater-enough/hot': ({ hotC, leastC }, f) =>
    `The instantaneous heater gives ${f.temperature(hotC)}; ${f.temperature(leastC)} is needed at the sinks.`,
  'heater-enough/cool': ({ hotC, leastC }, f) =>
    `The instantaneous heater gives ${f.temperature(hotC)}; ${f.temperature(leastC)} is needed at the sinks. Have licensed trades set it higher: water so hot scalds.`,

  'idle-criteria/standing': () => 'how it stands beside the criteria',
  'idle-criteria/ask-idle': () => 'power of the machine while it is idle',
  'idle-criteria/within': ({ machine, takes, most }, f) =>
    `While it is ready and washes nothing, ${nameWords(machine)} takes ${f.power(takes)}, within the ${f.power(most)} of the published criteria.`,
  'idle-criteria/above': ({ machine, takes, most }, f) =>
    `While it is ready and washes nothing, ${nameWords(machine)} takes ${f.power(takes)}, more than the ${f.power(most)} of the published criteria: switch it off between meals, or take another.`,

  'heat-units/total': () => 'the heat units of the recorded cycle',
  'heat-units/enough': ({ machine, units, needed }, f) =>
    `In the recorded cycle of ${nameWords(machine)} a plate took up ${f.count(Math.round(units))} heat units; ${f.count(needed)} sanitise.`,
  'heat-units/too-few': ({ machine, units, needed }, f) =>
    `In the recorded cycle of ${nameWords(machine)} a plate took up ${f.count(Math.round(units))} heat units of the ${f.count(needed)} that sanitise: a hotter rinse or a longer cycle, then record it again.`,
  'heat-units/hot': ({ machine, peakC, leastC }, f) =>
    `In the recorded cycle of ${nameWords(machine)} a plate came to ${f.temperature(peakC)}; the food code asks for ${f.temperature(leastC)} at its surface.`,
  'heat-units/cool': ({ machine, peakC, leastC }, f) =>
    `In the recorded cycle of ${nameWords(machine)} a plate came to ${f.temperature(peakC)} and the food code asks for ${f.temperature(leastC)} at its surface: a hotter rinse, then record it again.`,
  'heat-units/ask-record': () => 'temperatures that a thermometer at the plate showed over one cycle',
  'heat-units/start-up': () =>
    'Of the cycle that was recorded; a reading at start-up, by a thermometer that goes through the machine with the plates.',

  'hand-sink-water/unknown': () => 'To know whether the hand sink has warm water, say the temperature of the hot water.',
  'hand-sink-water/warm': ({ hotC, leastC, edition }, f) =>
    `Hot water comes at ${f.temperature(hotC)}; the food code of ${edition} asks for ${f.temperature(leastC)} at the hand sink. A mixing valve keeps it from scalding hands.`,
  'hand-sink-water/cool': ({ hotC, leastC, edition }, f) =>
    `Hot water comes at ${f.temperature(hotC)} and the food code of ${edition} asks for ${f.temperature(leastC)} at the hand sink: have it made hotter.`,

  'heater-needed/ask-storage': () => 'hot water in store, 0 for none',
  'heater-needed/this-room': () => 'For the fixtures of this room alone; other rooms on the same heater come on top.',
  // Shares: California directors of environmental health; peaks: Monterey County CA, form PC-HWH.
  'heater-needed/with-store': () =>
    'All of their demand counts, as with three meals a day (90 % with moderate use, 80 % with single-service ware), over a peak of 2 h, as with ware that is washed (1 h with single-service ware), to which the tank gives 0.7 of what it holds.',
  'heater-needed/at-once': () =>
    'Nothing is in store, so the heater warms at once 2 gpm for each sink, to 120 °F at least, and the rinse of each machine that is fed hot, as fast as its data sheet has it.',
  // San Joaquin County CA, form EHD 16-01; Monterey County CA, form PC-HWH.
  'heater-needed/by-gas': () =>
    'Of the gas 70 % is taken to reach the water, by the stricter of two county forms; the other takes about 75 %.',

  'sanitizing-heater/ask-way': () => 'way in which it sanitises',
  'sanitizing-heater/one-filling': () =>
    'Electric, for one filling of the bowl in an hour from the hot water of the room to 171 °F, at which ware by hand stays for 30 s; what the bowl gives to the room comes on top. Water so hot burns at once: long-handled baskets, and licensed trades to fit the heater.',

  'rinse-energy-per-rack/electric': () =>
    'Heated by electricity from the cold supply to the rinse, in the building and in the booster together.',
  'rinse-energy-per-rack/before-recovery': () => 'What the machine wins back is not taken off.',

  'recovered-heat/ask-share': () => 'share of the rinse’s heat that the machine wins back',
  'recovered-heat/cold-fed': () => 'Only with cold water in: hot water takes up no heat from the vapour, which then goes into the room.',

  'booster-power-needed/steady': () =>
    'To keep up with the rated rate, electric, 98 % of it in the water; the wash tank and the pumps come on top.',

  'rinse-heat/whole-power': () =>
    'The data sheet states no power for the booster alone, so the whole rated power is taken; pumps and tank heater leave it less, so the wait can be longer.',
  'rinse-heat/recovery-counted': () => 'With the heat won back as the data sheet states it; the first racks after a pause have none of it.',
  'rinse-heat/recovery-not-counted': () =>
    'Heat won back from the vapour is not counted, as the data sheet does not state it; it shortens the wait after the first racks.',

  'tank-heat-up/own-heater': () => 'By its own heater, from the water that comes in; what the cold body takes makes it longer.',
  'first-heat-up/one-rinse': () =>
    'The booster is counted with the water of one rinse, as the data sheet does not state what it holds: with more water, and a cold body, it takes longer.',
  'first-heat-up/order': () =>
    'Tank and booster heat at once where the rated power carries both or the booster stands apart, else in turn.',

  'energy-per-year/ask-heater-efficiency': () => 'efficiency of the water heater',
  'energy-per-year/pumps': () => 'Pumps take what the rated power leaves beside the heaters; a tank is filled once a day.',
  'energy-per-year/idle': ({ from }) => IDLE[from],
  'energy-per-year/habits': () =>
    'It takes so little only where it is turned off at night and its rinse pressure is kept in the maker’s range (EPA, WaterSense at Work).',
  'energy-per-year/in-building': () => 'Of the building’s water heater, from the cold water to the hot; what the pipes lose comes on top.',

  'running-cost/ask-price': ({ of }) => (of === 'water' ? 'price of water and sewer' : `price of ${of}`),
  'running-cost/currency': ({ currency }) => `In ${currency}.`,
  'running-cost/alone': () =>
    'Water and energy of the machine alone, as counted for the year; the pre-rinse spray, chemicals, labour and upkeep come on top.',
};

const rinseWords = ({ machine, rinseC }: Pick<RinseTemperatureMessages['rinse-temperature/within'], 'machine' | 'rinseC'>, f: Formatter) =>
  `The final rinse of ${nameWords(machine)} is at least ${f.temperature(rinseC)} by its data sheet`;

/** What water that is too cool does. */
const TOO_COOL: Readonly<Record<SupplyTemperatureMessages['supply-temperature/made-for-hot']['sanitizing'], string>> = {
  'hot-water': 'the rinse waits for the booster',
  chemical: 'wash and sanitiser do not work as they should',
};

const boosterWords = ({ machine, needed, has }: BoosterEnoughMessages['booster-enough/enough'], f: Formatter) =>
  `To keep ${nameWords(machine)} at its rated rate the booster needs ${f.power(needed)} and has ${f.power(has)}`;

const heaterWords = ({ needed, has, isInstant }: HeaterEnoughMessages['heater-enough/enough'], f: Formatter) =>
  `${isInstant ? 'With all its sinks open at once, and nothing in store,' : 'In the peak'} this room needs a water heater of ${f.power(needed)} and has ${f.power(has)}`;

const IDLE: Readonly<Record<YearEnergyMessages['energy-per-year/idle']['from'], string>> = {
  'data-sheet': 'For the hours that the machine is on and washes nothing, the idle power of the data sheet counts.',
  'no-tank': 'The data sheet states no idle power; without a tank to keep warm none is counted.',
  criteria:
    'The data sheet states no idle power: for the hours that the machine is on and washes nothing, what ENERGY STAR 1.0 allows a door machine is taken, 1.0 kW with hot water and 0.6 kW with chemicals.',
};
