import { boundOf, type Check, createMessages, holdReading, isOver, type Measurement, machinesPlace, type NoParams } from '../../../rules';
import type { Scene } from '../../../scene';
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

/** What is said of the pressure, in Pa. */
export interface StaticPressureMessages {
  'static-pressure/ask': NoParams;
  'static-pressure/what': NoParams;
  'static-pressure/within': { pressure: number; most: number };
  'static-pressure/too-high': { pressure: number; most: number };
}

const message = createMessages<StaticPressureMessages>();

const MOST = boundOf(STATIC_PRESSURE);

function measurePressure({ plan, machines }: Scene): Measurement {
  const value = plan.pipes.staticPressure;
  const ask = { input: message('static-pressure/ask'), path: ['pipes', 'staticPressure'] };
  return holdReading(
    { subjects: [], value, ...(value === null ? { ask } : {}), how: null },
    {
      place: machinesPlace({ machines }),
      what: message('static-pressure/what'),
      limit: MOST,
      message: (pressure) =>
        message(isOver(pressure, MOST) ? 'static-pressure/too-high' : 'static-pressure/within', { pressure, most: MOST }),
    },
  );
}
