import { describe, expect, it } from 'vitest';
import { measureDrawing, type TextPrim, textBox } from '../../src/drawing';
import { overlaps } from '../../src/drawing/layout/box';
import { createPlan, type Plan } from '../../src/plan';
import { renderSvg } from '../../src/render';
import { runChecks } from '../../src/rules';
import { deriveScene } from '../../src/scene';
import { drawPlanSheet, PAPERS, type PaperName, type Sheet, usualScales } from '../../src/sheets';
import { frameOf } from '../../src/sheets/area';
import { CHECKS } from '../../src/topics/registry';
import type { Units } from '../../src/units';
import { examplePlan, examplePlans } from '../support/examplePlans';

function drawSheet(plan: Plan, paper: PaperName, units: Units, scale: number | 'fit' = 'fit'): Sheet {
  const scene = deriveScene(plan);
  return drawPlanSheet(scene, runChecks(scene, CHECKS), { paper, scale, units });
}

/** Without the checks that hold: their number changes with every check that is added, the picture does not. */
function drawOpenSheet(plan: Plan, paper: PaperName): Sheet {
  const scene = deriveScene(plan);
  const open = runChecks(scene, CHECKS).filter(({ verdict }) => verdict !== 'clear');
  return drawPlanSheet(scene, open, { paper, scale: 'fit', units: plan.settings.units });
}

const textsOf = ({ drawing }: Sheet) => drawing.filter((prim): prim is TextPrim => prim.kind === 'text');
const wordsOf = (sheet: Sheet) => textsOf(sheet).map(({ text }) => text);

/** The rows of the air balance as they stand on A3; null where there is none. */
function airOf(
  name: Parameters<typeof examplePlan>[0],
  change: (plan: Plan) => void = () => {},
  units: Units = 'metric',
): Record<string, string> | null {
  const plan = structuredClone(examplePlan(name));
  change(plan);
  const words = wordsOf(drawSheet(plan, 'a3', units)).map((text) => text.replaceAll(/[\u00a0\u202f]/g, ' '));
  const start = words.indexOf('Air balance');
  if (start < 0) return null;
  const rows = words.slice(start + 1, words.indexOf('Room'));
  return Object.fromEntries(rows.flatMap((label, i) => (i % 2 === 0 ? [[label, rows[i + 1] ?? '']] : [])));
}

const PAPER_CASES: { paper: PaperName; units: Units }[] = [
  { paper: 'a4', units: 'metric' },
  { paper: 'a3', units: 'metric' },
  { paper: 'a1', units: 'metric' },
  { paper: 'ansi-a', units: 'us' },
  { paper: 'ansi-b', units: 'us' },
  { paper: 'arch-c', units: 'us' },
];
const CASES = examplePlans().flatMap(({ name, plan }) =>
  PAPER_CASES.map((options) => ({ name: `${name} on ${options.paper}`, plan, ...options })),
);

describe('a sheet', () => {
  it.each(CASES)('$name: nothing is cut, no text covers another', ({ plan, paper, units }) => {
    const sheet = drawSheet(plan, paper, units);
    const frame = frameOf(sheet.widthMm, sheet.heightMm);
    const bounds = measureDrawing(sheet.drawing, 1);
    expect(bounds?.minX).toBeGreaterThanOrEqual(frame.x - 0.5);
    expect(bounds?.minY).toBeGreaterThanOrEqual(frame.y - 0.5);
    expect(bounds?.maxX).toBeLessThanOrEqual(frame.x + frame.width + 0.5);
    expect(bounds?.maxY).toBeLessThanOrEqual(frame.y + frame.height + 0.5);
    const boxes = textsOf(sheet).map((text) => ({ text: text.text, box: textBox(text, 1) }));
    const covered = boxes.flatMap((a, i) =>
      boxes.slice(i + 1).flatMap((b) => (overlaps(a.box, b.box) ? [`“${a.text}” and “${b.text}”`] : [])),
    );
    expect(covered).toEqual([]);
    expect(usualScales(units)).toContain(sheet.scaleDenominator);
  });

  it.each(CASES.filter(({ paper }) => paper !== 'a4' && paper !== 'ansi-a'))(
    '$name: says everything that a sheet must',
    ({ plan, paper, units }) => {
      const sheet = drawSheet(plan, paper, units);
      const words = wordsOf(sheet);
      const all = words.join(' ');
      for (const part of [
        plan.title.project,
        plan.title.number,
        plan.title.date,
        plan.title.drawnBy,
        sheet.scaleText,
        PAPERS[paper].name,
        '1 of 1',
        'N',
      ]) {
        expect(all).toContain(part);
      }
      for (const heading of ['Equipment', 'Findings', 'Air balance', 'Room', 'Legend', 'Caution']) expect(words).toContain(heading);
      expect(all).toContain('The connection plate inside the machine, local code and licensed trades govern');
      expect(all).toMatch(/unrolled.*fall drawn × 10/);
      for (const mark of Object.values(deriveScene(plan).marks))
        expect(words.filter((text) => text === mark).length).toBeGreaterThanOrEqual(2);
    },
  );

  it('counts the findings and gives the worst in words', () => {
    const words = wordsOf(drawSheet(examplePlan('cafe-straight'), 'ansi-b', 'us'));
    expect(words).toContain('5 stop');
    expect(words.join(' ')).toContain('The order says right to left; the line runs left to right.');
  });

  it('the run bears its equivalent length', () => {
    expect(wordsOf(drawSheet(examplePlan('care-home-direct-vent'), 'ansi-b', 'us')).join(' ')).toMatch(/equivalent 70′\s0″ of 50′\s0″/);
  });

  // What is drawn out, blown in and comes from next door: the schedule of the NYC Mechanical Code 508.1.2 (read).
  it('balances the air of a hood, of a run and of a room that has neither', () => {
    expect(airOf('school-corner')).toEqual({
      'Drawn by hood 4': '250 L/s',
      'General exhaust of the room': '0 L/s',
      'Drawn out in all': '250 L/s',
      'Make-up air at 20 °C': '225 L/s',
      'From next rooms and cracks': '25 L/s',
    });
    expect(airOf('care-home-direct-vent')).toMatchObject({ 'Drawn by run 4': '200 L/s', 'Drawn out in all': '200 L/s' });
    expect(airOf('hotel-heat-recovery')).toMatchObject({ 'General exhaust of the room': '250 L/s', 'Drawn out in all': '250 L/s' });
  });

  // The run draws 200 L/s: 423.8 − 381.4 = 42.4 cfm; 423.8 + 105.5 = 529.3; and a room into which as much or more is blown.
  it.each([
    { name: 'as the example has it', flows: [0, 0.18] },
    { name: 'two parts that are both rounded up', flows: [0.0498, 0.18] },
    { name: 'more blown in than drawn out', flows: [0.0501, 0.3004] },
    { name: 'the same but for less than a half', flows: [0, 0.2001] },
  ] as const)('what is printed of the air adds up: $name', ({ flows: [roomExhaust, makeUp] }) => {
    for (const units of ['us', 'metric'] as const) {
      const rows = Object.entries(
        airOf('care-home-direct-vent', ({ air }) => void Object.assign(air, { roomExhaust, makeUp }), units) ?? {},
      );
      const printed = (label: RegExp) => Number.parseInt(rows.find(([name]) => label.test(name))?.[1] ?? '', 10);
      expect(printed(/^Drawn by run/) + printed(/^General/)).toBe(printed(/^Drawn out/));
      const left = rows.some(([name]) => name.startsWith('Pressed')) ? -printed(/^Pressed/) : printed(/^From next/);
      expect(printed(/^Make-up/) + left).toBe(printed(/^Drawn out/));
    }
  });

  it('says what of the air is not known, and which way the room presses', () => {
    expect(airOf('school-corner', ({ hoods: [hood] }) => void (hood && (hood.exhaust = null)))).toMatchObject({
      'Drawn by hood 4': 'not known',
      'Drawn out in all': 'not known',
      'From next rooms and cracks': 'not known',
    });
    expect(airOf('school-corner', ({ air }) => void (air.makeUp = 0.6))).toMatchObject({ 'Pressed out to the next rooms': '350 L/s' });
    expect(airOf('school-corner', ({ hoods: [hood] }) => void (hood && (hood.cavityAir = 0.1)))).toMatchObject({
      'of it blown into the hood': '100 L/s',
    });
  });

  it('leaves the balance out where no air is moved', () => {
    const still = airOf('school-corner', (plan) => {
      plan.hoods = [];
      Object.assign(plan.air, { roomExhaust: null, makeUp: null });
    });
    expect(still).toBeNull();
  });

  it('tells what plan reviewers ask of the room', () => {
    const all = wordsOf(drawSheet(examplePlan('school-corner'), 'a3', 'metric'))
      .join(' ')
      .replaceAll(/[\u00a0\u202f]/g, ' ');
    for (const part of [
      'coved to the walls',
      'washable',
      'lx where ware is washed',
      '60 °C at the stub',
      '208 V three-phase',
      'air changes an hour',
    ])
      expect(all).toContain(part);
  });

  it('names what is not known of the room', () => {
    const plan = structuredClone(examplePlan('hotel-heat-recovery'));
    Object.assign(plan.finish, { light: null, floorCoved: null, ceilingWashable: null });
    const words = wordsOf(drawSheet(plan, 'a3', 'metric'));
    expect(words).toContain('height not known, finish not known');
    expect(words.join(' ')).toContain('cove not known');
    expect(words[words.indexOf('Light') + 1]).toBe('not known');
  });

  it('a letter has the balance beside its title, and says what stands on wider paper', () => {
    const words = wordsOf(drawSheet(examplePlan('school-corner'), 'ansi-a', 'us'));
    expect(words).toContain('Air balance');
    expect(words).not.toContain('Room');
    expect(words.join(' ')).toContain('air and room data in full: on wider paper');
  });

  it('a scale that was asked for is taken when it fits, and gives way when it does not', () => {
    const plan = examplePlan('school-corner');
    expect(drawSheet(plan, 'a3', 'metric', 100).scaleDenominator).toBe(100);
    expect(drawSheet(plan, 'a3', 'metric', 60).scaleDenominator).toBe(60);
    expect(drawSheet(plan, 'a3', 'metric', 5).scaleDenominator).toBe(50);
  });

  it('long words are wrapped or elided, never cut', () => {
    const plan = structuredClone(examplePlan('school-corner'));
    plan.title.project = 'The Association of Municipal Schools, Kindergartens and Afternoon Clubs of the Upper Valley';
    plan.title.number = 'A-1234567890-1234567890-1234567890';
    plan.room.name = 'Dish room on the second basement level beside the goods lift and the linen store';
    for (const thing of plan.things) thing.name = 'A shelf with a name that is longer than any shelf that was ever built or named';
    const sheet = drawSheet(plan, 'a4', 'metric');
    const bounds = measureDrawing(sheet.drawing, 1);
    expect(bounds?.maxX).toBeLessThanOrEqual(287.5);
    expect(wordsOf(sheet).some((text) => text.endsWith('…'))).toBe(true);
  });

  it('an empty room is a sheet too', () => {
    const sheet = drawSheet(createPlan(), 'a3', 'metric');
    expect(wordsOf(sheet)).toContain('Findings');
    expect(wordsOf(sheet).join(' ')).not.toContain('unrolled');
  });

  it('a hall of 300 m is drawn small, not cut', () => {
    const plan = structuredClone(createPlan());
    plan.room.openings = [];
    plan.room.outline = plan.room.outline.map((corner) => ({ ...corner, x: corner.x * 60, y: corner.y * 60 }));
    expect(drawSheet(plan, 'a3', 'metric').scaleDenominator).toBe(2000);
  });
});

/** Pictures that were looked at. A changed one is looked at again before its snapshot is accepted. */
describe('snapshots', () => {
  it.each([
    { name: 'school-corner', paper: 'ansi-b' },
    { name: 'cafe-straight', paper: 'a4' },
    { name: 'care-home-direct-vent', paper: 'ansi-b' },
    { name: 'hotel-heat-recovery', paper: 'a3' },
  ] as const)('$name on $paper', async ({ name, paper }) => {
    const plan = examplePlan(name);
    await expect(renderSvg(drawOpenSheet(plan, paper))).toMatchFileSnapshot(`__snapshots__/${name}-${paper}.svg`);
  });
});
