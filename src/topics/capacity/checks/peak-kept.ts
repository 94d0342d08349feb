import {
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  isOver,
  isUnder,
  type Measurement,
  type Message,
  machinesPlace,
  type NoParams,
  readFigure,
} from '../../../rules';
import { dataSheetPath, type Scene } from '../../../scene';
import { rule as peakBacklogFigure } from '../figures/peak-backlog';
import { rule as peakWaitFigure } from '../figures/peak-wait';
import { rule as racksNeededInPeakFigure } from '../figures/racks-needed-in-peak';
import { rule as racksThatCanWaitFigure } from '../figures/racks-that-can-wait';
import { rule as rateWithBufferFigure } from '../figures/rate-with-buffer';
import { rateOfMachines } from '../figures/support/rush';
import { PRACTICAL_SHARE } from '../formulas/practicalRate';

export const check: Check = {
  id: 'peak-kept',
  order: 260,
  title: 'The machines keep up with the peak',
  group: 'capacity',
  unit: '1/h',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'UFC 4-740-12AN',
    section: '3-4.10 B, just faster than the ware comes back; that 0.70 of the rate is kept in practice is from memory',
    confidence: 'read',
  },
  why: 'A machine that is slower than the ware that comes back fills the tables and then the floor. The wait for the booster counts.',
  measure: (scene) => (scene.machines.length === 0 ? [] : [measurePeak(scene)]),
};

/** What is said of the peak. Rates in racks an hour. */
export interface PeakKeptMessages {
  'peak-kept/what': NoParams;
  'peak-kept/ask-booster': NoParams;
  'peak-kept/slower': Rates;
  /** What waits finds room, and is washed after the peak. */
  'peak-kept/slower-but-cleared': Rates & { clearedS: number };
  'peak-kept/short-in-practice': Rates & Scraping;
  'peak-kept/kept': Rates & Scraping;
}

interface Rates {
  rate: number;
  needed: number;
}

interface Scraping {
  /** Where one person who scraps may let fewer racks through than come back: how many; null where it is enough, or not known. */
  scrapedPerH: number | null;
}

const say = createMessages<PeakKeptMessages>();

/**
 * All machines together against the racks that come back; below the share that practice keeps it is a watch. So it is where they
 * are slower, but what waits finds room and is washed after the peak.
 */
function measurePeak(scene: Scene): Measurement {
  const needed = readFigure(racksNeededInPeakFigure, scene).find(({ part, ask }) => part === 'ware' || ask !== undefined);
  const rate = rateOfMachines(scene);
  const missing = needed?.value == null ? needed : undefined;
  const limit = needed?.value ?? null;
  const isSlower = limit !== null && rate.value !== null && isUnder(rate.value, limit);
  const cleared = isSlower && findsRoom(scene) ? clearedOf(scene) : undefined;
  const asked = cleared?.ask === undefined ? undefined : cleared;
  return holdReading(missing ?? asked ?? (isSlower ? rate : askBooster(scene, rate)), {
    subjects: scene.machines.map(({ machine }) => machine.id),
    place: machinesPlace(scene),
    what: say('peak-kept/what'),
    limit,
    ...(limit === null ? {} : { watchLimit: limit / PRACTICAL_SHARE }),
    ...(cleared?.value == null ? {} : { severity: 'watch' as const }),
    message: (value) => sayRate(scene, { rate: value, needed: limit ?? 0 }, cleared?.value ?? null),
  });
}

/** A rate that is enough, but rests on a booster as strong as all that its machine is rated for: the booster’s power is asked for. */
function askBooster(scene: Scene, rate: FigureReading): FigureReading {
  const open = scene.machines.find(({ sheet }) => sheet.sanitizing === 'hot-water' && sheet.booster === null);
  if (open === undefined || rate.value === null) return rate;
  return {
    ...rate,
    value: null,
    ask: {
      input: say('peak-kept/ask-booster'),
      path: dataSheetPath(scene, open, 'booster'),
    },
  };
}

/** Whether all that waits at the end of the peak has a place. */
function findsRoom(scene: Scene): boolean {
  const waiting = readFigure(peakBacklogFigure, scene).find(({ part }) => part === 'rated')?.value ?? null;
  return waiting !== null && !isOver(waiting, readFigure(racksThatCanWaitFigure, scene)[0]?.value ?? 0);
}

const clearedOf = (scene: Scene) => readFigure(peakWaitFigure, scene).find(({ part }) => part === 'cleared');

function sayRate(scene: Scene, rates: Rates, clearedS: number | null): Message {
  const { rate, needed } = rates;
  if (isUnder(rate, needed))
    return clearedS === null ? say('peak-kept/slower', rates) : say('peak-kept/slower-but-cleared', { ...rates, clearedS });
  const isShort = isUnder(rate * PRACTICAL_SHARE, needed);
  return say(isShort ? 'peak-kept/short-in-practice' : 'peak-kept/kept', { ...rates, scrapedPerH: scrapedBelow(scene, needed) });
}

/** The machines keep up, but people who scrap before them one by one may not. */
function scrapedBelow(scene: Scene, needed: number): number | null {
  const through = readFigure(rateWithBufferFigure, scene);
  if (through.length === 0 || through.some(({ value }) => value === null)) return null;
  const least = through.reduce((sum, { value }) => sum + (value ?? 0), 0);
  return isUnder(least, needed) ? least : null;
}
