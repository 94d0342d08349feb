import { expect, test } from 'vitest';
import { weatherCap } from '../../src/topics/duct';
import { valueOf } from '../support/valueOf';

const added = (cap: 'well-spaced' | 'low-cone') => valueOf(weatherCap({ cap })) - valueOf(weatherCap({ cap: 'none' }));

// source: Fans and Ventilation, A Practical Guide, weather cap of design B · secondary · within the span
test('a well-spaced cap adds 0.2 to 0.25, the larger is taken', () => expect(added('well-spaced')).toBe(0.25));

// source: Fans and Ventilation, A Practical Guide, weather cap of design A · secondary · exact
test('a low cone adds 1.0', () => expect(added('low-cone')).toBe(1));
