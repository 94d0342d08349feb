import { expect, test } from 'vitest';
import { judge } from '../../src/rules';
import { HAND_SINKS, REFUSE_BINS } from '../../src/topics/cleanliness';
import { HAND_SINK_2017, HAND_SINK_2022 } from '../../src/topics/heat';
import { HAND_SINK_DISTANCE } from '../../src/topics/people';
import { fromSI } from '../../src/units';

// source: WAC 246-215-09225, temporary establishments: 25 ft · read · exact
test.each([
  [25, 'pass'],
  [25.1, 'high'],
] as const)('%d ft to the hand sink: %s', (feet, expected) => expect(judge(HAND_SINK_DISTANCE, feet * 0.3048)).toBe(expected));

// source: WAC 246-215-05210, in force 2022-03-01: 100 °F (38 °C) · read · exact °F, whole °C as printed
test('100 °F at the hand sink', () => {
  expect(fromSI(HAND_SINK_2017.min ?? 0, 'F')).toBeCloseTo(100, 9);
  expect(Math.round(HAND_SINK_2017.min ?? 0)).toBe(38);
});

// source: FDA Food Code 2022, 5-202.12, in a public file: 85 °F (29.4 °C) · secondary · exact °F, 0.1 °C as printed
test('85 °F by the later code', () => {
  expect(fromSI(HAND_SINK_2022.min ?? 0, 'F')).toBeCloseTo(85, 9);
  expect(HAND_SINK_2022.min).toBeCloseTo(29.4, 1);
});

// source: WAC 246-215-05230 and 246-215-05530: a hand sink where ware is washed, a receptacle at each · read · exact
test.each([
  [HAND_SINKS, 1, 'pass'],
  [HAND_SINKS, 0, 'low'],
  [REFUSE_BINS, 1, 'pass'],
  [REFUSE_BINS, 0, 'low'],
] as const)('$title: %d is %s', (limit, count, expected) => expect(judge(limit, count)).toBe(expected));
