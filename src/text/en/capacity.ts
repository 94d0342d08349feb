import type { BacklogFitsMessages } from '../../topics/capacity/checks/backlog-fits';
import type { PeakKeptMessages } from '../../topics/capacity/checks/peak-kept';
import type { DryingTimeMessages } from '../../topics/capacity/figures/drying-time';
import type { PeakBacklogMessages } from '../../topics/capacity/figures/peak-backlog';
import type { PeakWaitMessages } from '../../topics/capacity/figures/peak-wait';
import type { PracticalRacksPerHourMessages } from '../../topics/capacity/figures/practical-racks-per-hour';
import type { RacksNeededInPeakMessages } from '../../topics/capacity/figures/racks-needed-in-peak';
import type { RacksOnLandingMessages } from '../../topics/capacity/figures/racks-on-landing';
import type { RacksThatCanWaitMessages } from '../../topics/capacity/figures/racks-that-can-wait';
import type { RacksWaitingByChanceMessages } from '../../topics/capacity/figures/racks-waiting-by-chance';
import type { RateWithBufferMessages } from '../../topics/capacity/figures/rate-with-buffer';
import { formatNumber } from '../../units';
import { figureWords } from '../quantities/figureWords';
import type { Wording } from '../wording';

type CheckMessages = BacklogFitsMessages & PeakKeptMessages;
type FigureMessages = DryingTimeMessages &
  PeakBacklogMessages &
  PeakWaitMessages &
  PracticalRacksPerHourMessages &
  RacksNeededInPeakMessages &
  RacksOnLandingMessages &
  RacksThatCanWaitMessages &
  RacksWaitingByChanceMessages &
  RateWithBufferMessages;

/** The words of the capacity: the racks that the machines do, those that come back in the peak, and those that wait. */
export const capacity: Wording<CheckMessages & FigureMessages> = {
  'backlog-fits/what': () => 'how many racks wait at the end of the peak',
  'backlog-fits/none-waits': () => 'No rack waits at the end of the peak.',
  'backlog-fits/room': (racks) => `${wait(racks)}, and ${found(racks)} before the machine.`,
  'backlog-fits/too-little-room': (racks) =>
    `${wait(racks)}, for they come back faster than the machine washes, and ${found(racks)} before it: with a faster machine none would wait; a longer soiled landing or a cart would hold them until they are washed.`,
  'backlog-fits/too-little-room-in-practice': (racks) =>
    `${wait(racks)}, when the machine does 0.70 of its rate, and ${found(racks)} before the machine: lengthen the soiled landing, add a cart, or take a faster machine.`,

  'peak-kept/what': () => 'whether the machines keep up with the peak',
  'peak-kept/ask-booster': () => 'power of the booster',
  'peak-kept/slower': (rates) => `${slower(rates)}: take a faster machine, a second one, or a longer peak.`,
  'peak-kept/slower-but-cleared': ({ clearedS, ...rates }, f) =>
    `${slower(rates)}; what waits finds room, and is washed ${figureWords(clearedS, 's', f)} after the peak. A faster machine would leave nothing to wait.`,
  'peak-kept/short-in-practice': ({ scrapedPerH, ...rates }) =>
    `${does(rates)}, and in practice about 0.70 of that. Have room for racks that wait.${scraping(scrapedPerH)}`,
  'peak-kept/kept': ({ scrapedPerH, ...rates }) => `${does(rates)}, enough also at 0.70 of it.${scraping(scrapedPerH)}`,

  'drying-time/rated': () => 'At the rated rate, on the average: how long a rack may stand before the next ones need its place.',

  'peak-backlog/rated': () => 'At the rate of the machines, with the wait for their boosters.',
  'peak-backlog/practice': () => 'At 0.70 of the rate of the machines: texts give 0.70 to 0.80, from memory.',
  'peak-backlog/stream': () => 'Ware is taken to come back evenly through the peak, with nothing waiting before it.',

  'peak-wait/longest': () => 'The last rack to come back in the peak, at the rate of the machines.',
  'peak-wait/nothing-waits': () => 'The machines keep up: nothing waits at the end of the peak.',
  'peak-wait/after': () =>
    'Counted from the end of the peak, at the rate of the machines. The other meals of the day are spread evenly over the other hours that the machine is on.',

  'practical-racks-per-hour/share': () =>
    'Taken as 0.70 of the rated rate: texts give 0.70 to 0.80, from memory. A wait for the booster is not counted.',

  'racks-needed-in-peak/ware': () => 'The racks themselves, as fast as they come back.',
  'racks-needed-in-peak/rated': () =>
    'The rated rate of all machines together, when 0.70 of it is kept in practice: texts give 0.70 to 0.80, from memory.',

  'racks-on-landing/as-many-on-slide': () => 'As many with 20½ in (521 mm) for each, the size of a rack slide.',
  'racks-on-landing/on-slide': ({ racks }) => `${racks} with 20½ in (521 mm) for each, the size of a rack slide.`,
  'racks-on-landing/places-to-dry': () =>
    'One city (Orono MN, plan review of 6 April 2000) asks for 3 places to dry after hot water and 5 after chemicals.',

  'racks-that-can-wait/where': ({ landings, dropOffs, carts }) =>
    `${landings} before the machine, ${dropOffs} at the drop-off, ${carts} on carts and the like. Those are taken to hold one layer of racks, side by side; more where there are shelves.`,

  'racks-waiting-by-chance/average': () =>
    'On the average, while the peak lasts: also machines that keep up let racks wait when several come at once. Their cycle is fixed; all of them are taken as one.',

  'rate-with-buffer/least': ({ slowerPerH }) =>
    `The least: one person scraps and rinses, and the times of both vary by chance, so that each waits for the other. The more even the times, the nearer it comes to the slower of the two, ${formatNumber(slowerPerH, 1)} an hour.`,
};

type Waiting = BacklogFitsMessages['backlog-fits/room'];

const wait = ({ waiting }: Waiting) => `At the end of the peak ${formatNumber(waiting, 1)} racks wait`;

const found = ({ places }: Waiting) => (places === 0 ? 'there is no room for any' : `there is room for ${places}`);

type Rates = PeakKeptMessages['peak-kept/slower'];

const comeBack = ({ needed }: Rates) => `In the peak ${formatNumber(needed, 1)} racks an hour come back`;

const slower = (rates: Rates) => `${comeBack(rates)} and the machine does ${formatNumber(rates.rate, 1)}`;

const does = (rates: Rates) => `${comeBack(rates)}; the machine does ${formatNumber(rates.rate, 1)}`;

const scraping = (scrapedPerH: number | null) =>
  scrapedPerH === null
    ? ''
    : ` One person who scraps before it may let no more than ${formatNumber(scrapedPerH, 1)} through: have a second one in the peak, or a longer landing.`;
