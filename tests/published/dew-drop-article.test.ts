import { test } from 'vitest';
import { innerSurface, measureMoistAirOfRelative, rValue } from '../../src/topics/air';
import { fromSI, toSI } from '../../src/units';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

/** A wall whose sheathing has so much of its R outside, between 32 and 70 °F. */
const sheathing = (outside: number, all: number) =>
  fromSI(
    valueOf(
      innerSurface({
        insideC: toSI(70, 'F'),
        outsideC: 0,
        insideR: rValue(all - outside),
        wallR: rValue(outside - 1),
        outsideR: rValue(1),
      }),
    ),
    'F',
  );
const dew = fromSI(
  valueOf(measureMoistAirOfRelative({ temperatureC: toSI(70, 'F'), relativeHumidity: 0.5, pressurePa: 101_325 })).dewPointC,
  'F',
);

// source: Where Does the Dew Drop, trade article: R-7 of of R-25, dew point of 70 °F and 50 % · secondary · 1 °F
test.each([
  ['R-7 of R-18', sheathing(7, 18), 47],
  ['R-14 of R-25', sheathing(14, 25), 53],
  ['dew point', dew, 50],
])('%s: %d °F', (_name, computed, printed) => expectNear(computed, printed, 1));
