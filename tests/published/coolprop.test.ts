import { test } from 'vitest';
import { humidityRatioOfRelative, measureMoistAirOfRelative, moistEnthalpy } from '../../src/topics/air';
import { expectNear } from '../support/expectNear';
import { valueOf } from '../support/valueOf';

// A real-gas library: the perfect-gas formulas come within a part in 400 of it.

// source: CoolProp 7.2 documentation, examples, humid air of 298.15 K and 50 % · read · 0.25 %
test('50423.45 J/kg of dry air', () => {
  expectNear(
    valueOf(measureMoistAirOfRelative({ temperatureC: 25, relativeHumidity: 0.5, pressurePa: 101_325 })).enthalpyJkg,
    50_423.45,
    '0.25 %',
  );
});

// source: CoolProp 7.2 documentation, examples, saturated air of that enthalpy at 290.962 K · read · 0.25 %
test('saturated at 290.962 K', () => {
  const temperatureC = 290.962 - 273.15;
  const humidityRatio = valueOf(humidityRatioOfRelative({ temperatureC, relativeHumidity: 1, pressurePa: 101_325 }));
  expectNear(moistEnthalpy({ temperatureC, humidityRatio }), 50_423.45, '0.25 %');
});
