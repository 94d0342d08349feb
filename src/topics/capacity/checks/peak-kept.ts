import {
  type Check,
  type FigureReading,
  figureWords,
  holdReading,
  isOver,
  isUnder,
  type Measurement,
  machinesPlace,
  readFigure,
} from '../../../rules';
import { type Scene, sheetPath } from '../../../scene';
import { type Formatter, formatNumber } from '../../../units';
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
    name: 'whether the machines keep up with the peak',
    limit,
    ...(limit === null ? {} : { watchLimit: limit / PRACTICAL_SHARE }),
    ...(cleared?.value == null ? {} : { severity: 'watch' as const }),
    say: (value, f) => `${sayRate(value, limit ?? 0, cleared?.value ?? null, f)}${sayScraping(scene, value, limit ?? 0)}`,
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
      input: 'power of the booster',
      path: sheetPath(scene, open, 'booster'),
    },
  };
}

/** Whether all that waits at the end of the peak has a place. */
function findsRoom(scene: Scene): boolean {
  const waiting = readFigure(peakBacklogFigure, scene).find(({ part }) => part === 'rated')?.value ?? null;
  return waiting !== null && !isOver(waiting, readFigure(racksThatCanWaitFigure, scene)[0]?.value ?? 0);
}

const clearedOf = (scene: Scene) => readFigure(peakWaitFigure, scene).find(({ part }) => part === 'cleared');

function sayRate(rate: number, needed: number, clearedS: number | null, f: Formatter): string {
  const [can, must] = [formatNumber(rate, 1), formatNumber(needed, 1)];
  const slower = `In the peak ${must} racks an hour come back and the machine does ${can}`;
  if (isUnder(rate, needed))
    return clearedS === null
      ? `${slower}: take a faster machine, a second one, or a longer peak.`
      : `${slower}; what waits finds room, and is washed ${figureWords(clearedS, 's', f)} after the peak. A faster machine would leave nothing to wait.`;
  if (isUnder(rate * PRACTICAL_SHARE, needed))
    return `In the peak ${must} racks an hour come back; the machine does ${can}, and in practice about 0.70 of that. Have room for racks that wait.`;
  return `In the peak ${must} racks an hour come back; the machine does ${can}, enough also at 0.70 of it.`;
}

/** Where the machines keep up, but people who scrap before them one by one may not. */
function sayScraping(scene: Scene, rate: number, needed: number): string {
  const through = readFigure(rateWithBufferFigure, scene);
  if (isUnder(rate, needed) || through.length === 0 || through.some(({ value }) => value === null)) return '';
  const least = through.reduce((sum, { value }) => sum + (value ?? 0), 0);
  if (!isUnder(least, needed)) return '';
  return ` One person who scraps before it may let no more than ${formatNumber(least, 1)} through: have a second one in the peak, or a longer landing.`;
}
