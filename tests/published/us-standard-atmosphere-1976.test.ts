import { test } from 'vitest';
import { airViscosity } from '../../src/topics/duct';
import { expectNear } from '../support/expectNear';

// source: (viscosity) · U.S. Standard Atmosphere 1976, dynamic viscosity at sea level, 15 °C, as public constants restate it · secondary · 0.05 %
test('1.789e-5 Pa·s', () => expectNear(airViscosity({ temperatureC: 15 }), 1.789e-5, '0.05 %'));
