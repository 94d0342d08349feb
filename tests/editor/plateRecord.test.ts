import { describe, expect, test } from 'vitest';
import { formatPlateRecord, setPlateRecordText } from '../../src/editor';
import { applyChange, createLinePlan } from '../../src/plan';

const plan = createLinePlan({ family: 'recirculating-hot-water', configuration: 'straight', hand: 'left-to-right' });
const machine = plan.machines[0]!.id;

function read(text: string, units: 'us' | 'metric' = 'metric') {
  const result = setPlateRecordText(plan, machine, text, units);
  if (!result.ok) return result.problem.replaceAll(/[\u00a0\u202f]/g, ' ');
  return applyChange(plan, result.transaction).machines[0]!.hookUp.plateRecord.map(({ at, tempC }) => [at, Number(tempC.toFixed(3))]);
}

const TWO = [
  [0, 20],
  [12.5, 71],
];

describe('what people type or paste', () => {
  test.each([
    ['commas', '0, 20\n12.5, 71'],
    ['commas without a space', '0,20\n12.5,71'],
    ['semicolons and decimal commas', '0;20\n12,5;71,0'],
    ['tabs, as from a table', '0\t20\r\n12,5\t71\r\n'],
    ['spaces', '0 20\n12.5   71'],
    ['decimal commas and spaces', '0,0 20,0\n12,5 71,0'],
    ['units', '0 s, 20 °C\n12.5 s 71 C'],
    ['a heading and empty lines', 'time, temperature\n\n0, 20\n\n12.5, 71\n'],
  ])('%s', (_name, text) => expect(read(text)).toEqual(TWO));

  test('a bare temperature is in the units that are read', () => {
    expect(read('0, 68\n10, 165', 'us')).toEqual([
      [0, 20],
      [10, 73.889],
    ]);
  });

  test('no text takes the record away', () => expect(read(' \n')).toEqual([]));

  test('what is kept reads back as it was typed', () => {
    const record = [
      { at: 0, tempC: 20 },
      { at: 12.5, tempC: 71.1111 },
    ];
    expect(formatPlateRecord(record, 'us')).toBe('0, 68\n12.5, 160');
    expect(formatPlateRecord(record, 'metric')).toBe('0, 20\n12.5, 71.11');
  });
});

describe('a refusal names the line', () => {
  test.each([
    ['0, 20\nabout ten, 70', 'Line 2: “about ten, 70” is not seconds and a temperature, as in “12, 71”.'],
    ['0, 20\n10', 'Line 2: “10” is not seconds and a temperature, as in “12, 71”.'],
    ['0, 20\n10, 70, 80', 'Line 2: “10, 70, 80” is not seconds and a temperature'],
    ['0, 20\n\n10, 70\n10, 71', 'Line 4: 10 s does not come after 10 s.'],
    ['0, 20\n10, 200', 'Line 2: 200 °C is no temperature of a plate: 0 °C to 120 °C.'],
    ['0, 20\n4000, 70', 'Line 2: 4000 s is outside of a cycle'],
    ['0, 20\n10, 70 psi', 'Line 2: “psi” is not a unit of temperature here'],
    ['0, 20', 'One reading makes no cycle: give two lines at least.'],
    [Array.from({ length: 501 }, (_, i) => `${i}, 20`).join('\n'), 'There are 501 readings; 500 fit.'],
  ])('%j', (text, problem) => expect(read(text)).toContain(problem));
});
