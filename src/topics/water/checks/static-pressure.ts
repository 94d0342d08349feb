import { boundOf, type Check, holdReading, isOver, type Measurement, machinesPlace } from '../../../rules';
import type { Scene } from '../../../scene';
import type { Formatter } from '../../../units';
import { STATIC_PRESSURE } from '../formulas/rinsePressure';

export const check: Check = {
  id: 'static-pressure',
  order: 300,
  title: 'Pressure at rest',
  group: 'water',
  unit: 'Pa',
  relation: 'at-most',
  source: { kind: 'published', document: 'UPC (2015)', section: '608.2, as IAPMO prints it', confidence: 'read' },
  why: 'Above 80 psi valves, hoses and the machine’s own fittings wear and burst. A licensed plumber fits the valve, with an expansion tank after it, by local code.',
  measure: (scene) => (scene.machines.length === 0 ? [] : [measurePressure(scene)]),
};

const MOST = boundOf(STATIC_PRESSURE);

function measurePressure({ plan, machines }: Scene): Measurement {
  const value = plan.pipes.staticPressure;
  const ask = { input: 'pressure in the pipe while nothing flows', path: ['pipes', 'staticPressure'] };
  return holdReading(
    { subjects: [], value, ...(value === null ? { ask } : {}), how: null },
    {
      place: machinesPlace({ machines }),
      name: 'whether a pressure-reducing valve is needed',
      limit: MOST,
      say: sayPressure,
    },
  );
}

function sayPressure(value: number, f: Formatter): string {
  if (isOver(value, MOST))
    return `At rest the water stands at ${f.pressure(value)}, more than ${f.pressure(MOST)}: have a pressure-reducing valve fitted, set to that or less, and an expansion tank after it; pipes after it are sized on 80 % of what it is set to.`;
  return `At rest the water stands at ${f.pressure(value)}, under the ${f.pressure(MOST)} above which it needs a pressure-reducing valve.`;
}
