import type { MakeUpBalancesMessages } from '../../topics/air/checks/make-up-balances';
import type { MakeUpTemperedMessages } from '../../topics/air/checks/make-up-tempered';
import type { RoomHumidityMessages } from '../../topics/air/checks/room-humidity';
import type { WallsDryMessages } from '../../topics/air/checks/walls-dry';
import type { AirChangesMessages } from '../../topics/air/figures/air-changes';
import type { ExhaustShareMessages } from '../../topics/air/figures/exhaust-share';
import type { MakeUpAirMessages } from '../../topics/air/figures/make-up-air';
import type { RoomHumidityRisingMessages } from '../../topics/air/figures/room-humidity-rising';
import type { RoomTemperatureSteadyMessages } from '../../topics/air/figures/room-temperature-steady';
import type { AirAskMessages } from '../../topics/air/figures/support/airAsks';
import type { MachineHeatGainMessages } from '../../topics/air/figures/support/machineHeats';
import type { RoomMoistureMessages } from '../../topics/air/figures/support/roomMoisture';
import type { SurfaceMarginMessages } from '../../topics/air/figures/surface-margin';
import { formatNumber } from '../../units';
import { partWords } from '../quantities/partWords';
import type { Wording } from '../wording';
import { sentence } from './words';

/** The words of the air of the room: what is drawn out and comes in, heat and vapour. */
export const air: Wording<
  AirAskMessages &
    MakeUpBalancesMessages &
    MakeUpTemperedMessages &
    RoomHumidityMessages &
    WallsDryMessages &
    AirChangesMessages &
    ExhaustShareMessages &
    MakeUpAirMessages &
    RoomHumidityRisingMessages &
    RoomTemperatureSteadyMessages &
    MachineHeatGainMessages &
    RoomMoistureMessages &
    SurfaceMarginMessages
> = {
  'air/ask-room-temperature': () => 'temperature of the room',
  'air/ask-room-humidity': () => 'humidity of the room',
  'air/ask-make-up-air': () => 'make-up air',
  'air/ask-make-up-temperature': () => 'temperature of the make-up air',
  'air/ask-make-up-humidity': () => 'humidity of the make-up air',
  'air/ask-room-exhaust': () => 'general exhaust of the room',
  'air/ask-outdoor-temperature': () => 'coldest air outside',
  'air/ask-duct-air-temperature': () => 'temperature of the air around the run outside of the room',
  'air/ask-wall-conductance': () => 'heat through the outer wall',
  'air/ask-ceiling-conductance': () => 'heat through the ceiling',
  'air/ask-elevation': () => 'height above the sea',
  'air/ask-hood-exhaust': () => 'exhaust of the hood',
  'air/ask-run-airflow': () => 'airflow of the run',
  'air/ask-ceiling-height': () => 'ceiling height',

  'make-up-balances/what-negative': () => 'whether the dish room draws air in',
  'make-up-balances/draws-in': ({ airflow }, f) =>
    `The dish room draws ${f.airflow(airflow)} out of the rooms about it, so its vapour stays in it.`,
  'make-up-balances/blows-out': ({ airflow }, f) =>
    `The dish room blows ${f.airflow(airflow)} out into the rooms about it, so its vapour goes into the next rooms. Blow in less make-up air, or draw out more.`,
  'make-up-balances/even': () =>
    'As much air is blown into the dish room as is drawn out, so its vapour goes into the next rooms. Blow in less make-up air, or draw out more.',
  'make-up-balances/enough': ({ makeUp, exhaust }, f) =>
    `${f.airflow(makeUp)} of make-up air stand against ${f.airflow(exhaust)} of exhaust.`,
  'make-up-balances/too-little': ({ makeUp, exhaust, wanted }, f) =>
    `${f.airflow(makeUp)} of make-up air stand against ${f.airflow(exhaust)} of exhaust, and about ${f.airflow(wanted)} are looked for: bring in ${f.airflow(wanted - makeUp)} more.`,
  'make-up-balances/ask-interlock': () => 'interlock of make-up air and exhaust',
  'make-up-balances/interlock-unknown': () => 'Does the make-up air start and run together with the exhaust?',
  'make-up-balances/interlocked': () => 'The make-up air starts and runs together with the exhaust.',
  'make-up-balances/not-interlocked': () =>
    'The make-up air does not start with the exhaust: one without the other blows vapour into the next rooms or starves the hood. Interlock the two.',
  'make-up-balances/repair-interlock-make-up': () => 'Call for make-up air that starts with the exhaust',
  'make-up-balances/what-at-machines': () => 'the part of the exhaust at the machines',
  'make-up-balances/drawn-at-machines': ({ share }) =>
    `${percent(share)} of the exhaust is drawn at the machines, the rest at the ceiling.`,
  'make-up-balances/drawn-at-ceiling': ({ share, wanted }) =>
    `${percent(share)} of the exhaust is drawn at the machines, the rest at the ceiling; about ${percent(wanted)} is looked for. Draw more at the machine and less at the ceiling.`,

  'make-up-tempered/what-make-up': () => 'whether the make-up air is warm enough',
  'make-up-tempered/warm': ({ temperature, wanted }, f) =>
    `The make-up air comes in at ${f.temperature(temperature)}; ${f.temperature(wanted)} is looked for.`,
  'make-up-tempered/cold': ({ temperature, wanted }, f) =>
    `The make-up air comes in at ${f.temperature(temperature)}, and ${f.temperature(wanted)} is looked for. Heat it first.`,
  'make-up-tempered/what-difference': () => 'how far the make-up air is from the room',
  'make-up-tempered/near': ({ apart, most }, f) =>
    `Make-up air and room are ${f.temperatureDifference(apart)} apart; ${f.temperatureDifference(most)} is the most.`,
  'make-up-tempered/near-where-it-helps': ({ apart, usual }, f) =>
    `Make-up air and room are ${f.temperatureDifference(apart)} apart: more than ${f.temperatureDifference(usual)} is let pass only where it helps the heating or the cooling.`,
  'make-up-tempered/apart': ({ apart, most }, f) =>
    `Make-up air and room are ${f.temperatureDifference(apart)} apart, and ${f.temperatureDifference(most)} is the most even where it helps the load. Heat or cool it nearer to the room.`,
  'make-up-tempered/what-work-area': () => 'whether people can work in the room',
  'make-up-tempered/room-good': ({ temperature, most }, f) =>
    `The room is at ${f.temperature(temperature)}; ${f.temperature(most)} is the most for work.`,
  'make-up-tempered/room-warm': ({ temperature, most }, f) =>
    `The room is at ${f.temperature(temperature)}, more than ${f.temperature(most)} for work. Draw more at the machine, or cool the make-up air.`,
  'make-up-tempered/what-warmed': () => 'how warm the room grows',
  'make-up-tempered/warmed-good': ({ temperature, most }, f) =>
    `Without cooling the machines warm the room to ${f.temperature(temperature)}; ${f.temperature(most)} is the most for work.`,
  'make-up-tempered/warmed-too-much': ({ temperature, most }, f) =>
    `Without cooling the machines warm the room to ${f.temperature(temperature)}, more than ${f.temperature(most)} for work. Draw more air through the room, or cool it.`,

  'room-humidity/what': () => 'how humid the room grows',
  'room-humidity/holds': ({ humidity, most }) =>
    `While the machine washes rack after rack the room grows to ${percent(humidity)}; ${percent(most)} is the most.`,
  'room-humidity/too-humid': ({ humidity, most, needed }, f) =>
    `While the machine washes rack after rack the room grows to ${percent(humidity)}, more than ${percent(most)}. ${
      needed === null ? 'Bring in drier air' : `Draw ${f.airflow(needed)} of such air through the room, or drier air`
    }.`,

  'walls-dry/what': ({ surface }) => `whether ${SURFACES[surface]} sweats`,
  'walls-dry/dry': ({ surface, margin }, f) =>
    sentence(`${SURFACES[surface]} stays ${f.temperatureDifference(margin)} above the dew point of the room.`),
  'walls-dry/sweats': ({ surface, short }, f) =>
    sentence(
      `${SURFACES[surface]} is ${f.temperatureDifference(short)} below the dew point of the room when it is coldest outside, and sweats. Insulate it, or keep the room drier.`,
    ),

  'air-changes/whole-kitchens': ({ supplyLeast, least, most }) =>
    `For whole kitchens a hospital manual asks ${supplyLeast} an hour or more of supply air, military criteria of 2004 ${least} to ${most}. It is not judged: the dish room is one part of them.`,
  'exhaust-share/rest': () => 'The rest is drawn at the ceiling.',
  'make-up-air/all-of-it': ({ rule }) =>
    `For the exhaust that governs (${partWords(rule)}); all of it as make-up air, none of it from other rooms.`,
  'room-humidity-rising/from-plan': () =>
    'From the humidity that the plan states for the room; walls and ware take up some vapour at first.',
  'room-temperature-steady/machines-alone': () =>
    'Make-up air, and air of the next rooms at the plan’s air in the room, warmed by the machines alone: no cooling, and no heat of people, light and hot ware.',
  'machine-heat-gain/stated': () => 'As the data sheet states it, while the machine works.',
  'machine-heat-gain/vapour-way': ({ way }) => `While it washes rack after rack${VAPOUR_WAYS[way]}.`,
  'machine-heat-gain/table': ({ table }) => HEAT_TABLES[table],
  'machine-heat-gain/slow': ({ dishesPerHour }) =>
    `It washes fewer dishes than the ${dishesPerHour} an hour at which the table begins, and is counted as that many: the most that it can be.`,
  'machine-heat-gain/fed-wrong': () =>
    'It is made for cold water and fed with hot, so it wins nothing back: the row without recovery counts, and no less than the data sheet states.',
  'room-moisture/next-rooms': () => 'Air that comes from the next rooms is counted as the plan’s air in the room.',
  'room-moisture/temperature-held': () => 'The room is held at its temperature.',
  'surface-margin/coldest-outside': () => 'With the coldest air outside behind it; the usual films of air on both sides are from memory.',
};

const percent = (share: number) => `${formatNumber(100 * share)} %`;

const SURFACES = { wall: 'the outer wall', ceiling: 'the ceiling' } as const;

/** What takes the vapour of a machine, at the end of a sentence. */
const VAPOUR_WAYS: Readonly<Record<MachineHeatGainMessages['machine-heat-gain/vapour-way']['way'], string>> = {
  none: '; nothing takes the vapour',
  hood: ', under a hood',
  'direct-vent': '; the vent is counted as a hood',
  condensing:
    '; its data sheet does not state its heat to the room, so what it wins back is not taken off: this is the most that it can be',
};

const HEAT_TABLES: Readonly<Record<MachineHeatGainMessages['machine-heat-gain/table']['table'], string>> = {
  '2001': 'By the table of 2001.',
  '2009-2017': 'By the table of 2009–2017, which was not read.',
};
