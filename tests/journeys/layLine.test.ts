import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { createPlan } from '../../src/plan/index.ts';
import { formatterFor } from '../../src/units/index.ts';
import { openPage, screenshot } from './openPage.ts';
import {
  chooseInList,
  drag,
  keptPlan,
  moveTo,
  noteTexts,
  onScreen,
  press,
  readVerdicts,
  seePaper,
  takeTool,
  textsOf,
  typeInto,
} from './paper.ts';

const undoButton = (page: Page) => page.getByRole('button', { name: 'Undo' });

it('a line is laid from nothing: machine, tables that meet it, fittings, hood, run, a sink', async () => {
  const page = await openPage({ plan: createPlan() });
  await takeTool(page, 'Recirculating, hot-water sanitising, booster built in');
  await press(page, { x: 2600, y: 700 });
  const machine = (await keptPlan(page)).machines[0];
  if (!machine) throw new Error('no machine was placed');
  await takeTool(page, 'Soiled table');
  await drag(page, { x: machine.x - 380, y: machine.y }, { x: 500, y: machine.y });
  await takeTool(page, 'Clean table');
  await drag(page, { x: machine.x + 380, y: machine.y }, { x: 4500, y: machine.y });
  await takeTool(page, 'Hood');
  await press(page, machine);
  await screenshot(page, 'line-laid');
  for (const kind of ['Scrap', 'Pre-rinse', 'Drop-off']) {
    await page.getByRole('button', { name: 'Add a station after drop-off' }).click();
    await page.getByRole('menuitem', { name: kind, exact: true }).click();
  }
  await takeTool(page, 'Hand sink');
  await press(page, { x: 4300, y: 3300 });
  const plan = await keptPlan(page);
  expect(plan.tables.map(({ role, place }) => [role, place])).toEqual([
    ['soiled', { kind: 'joined', machine: machine.id, side: 'left', gap: 0, offset: 0, skewDeg: 0 }],
    ['clean', { kind: 'joined', machine: machine.id, side: 'right', gap: 0, offset: 0, skewDeg: 0 }],
  ]);
  expect(plan.tables[0]?.fittings.map(({ kind }) => kind).sort()).toEqual(['drop-off', 'scrap', 'sink']);
  expect(plan.hoods).toHaveLength(1);
  expect(plan.things.map(({ kind }) => kind)).toEqual(['hand-sink']);
  expect(await page.locator('.station[data-absent="true"] .name').allInnerTexts()).toEqual(['Storage']);
  // The hood that is hung over a machine captures.
  await page.getByRole('button', { name: /checks? hold/ }).click();
  expect(
    await page
      .locator('.finding[data-check="hood-overhang"]')
      .evaluateAll((rows) => rows.map((r) => (r as HTMLElement).dataset['verdict'])),
  ).not.toContain('stop');
  await screenshot(page, 'line-fitted');
});

it('a run is drawn leg by leg, and its length is on its card', async () => {
  const page = await openPage();
  await takeTool(page, 'Duct run');
  await press(page, { x: 4992, y: 494 });
  await moveTo(page, { x: 4992, y: 2000 });
  await page.keyboard.type('5 ft');
  await page.keyboard.press('Enter');
  await moveTo(page, { x: 3000, y: 494 + 5 * 304.8 });
  await page.keyboard.type('6 ft');
  await page.keyboard.press('Enter');
  await page.keyboard.press('Enter');
  const [run] = (await keptPlan(page)).runs;
  const [a, b, c] = run?.points.slice(-3) ?? [];
  if (!a || !b || !c) throw new Error('the run has no two legs');
  expect([Math.hypot(b.x - a.x, b.y - a.y), Math.hypot(c.x - b.x, c.y - b.y)]).toEqual([
    expect.closeTo(5 * 304.8, 3),
    expect.closeTo(6 * 304.8, 3),
  ]);
  await screenshot(page, 'run-drawn');
});

it('tables follow the machine flush while it is dragged, lengths are shown, it is one step, and Escape gives it up', async () => {
  const page = await openPage({ before: noteTexts });
  const before = await keptPlan(page);
  const [machine] = before.machines;
  if (!machine) throw new Error('the example has no machine');
  const [from, to] = [await onScreen(page, machine.x + 120, machine.y + 150), await onScreen(page, machine.x - 1400, machine.y + 900)];
  await page.mouse.move(from.x, from.y);
  const still = await seePaper(page);
  await page.mouse.down();
  await page.mouse.move(to.x, to.y, { steps: 8 });
  await page.keyboard.press('Escape');
  await page.mouse.up();
  expect(await keptPlan(page)).toEqual(before);
  expect(await undoButton(page).isDisabled()).toBe(true);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  const written = await textsOf(page, () => page.mouse.move(to.x, to.y, { steps: 12 }));
  await screenshot(page, 'machine-dragged');
  expect(await seePaper(page)).not.toBe(still);
  await page.mouse.up();
  const after = await keptPlan(page);
  expect(after.machines[0]?.x).toBeCloseTo(machine.x - 1520, -2);
  expect(after.tables).toEqual(before.tables);
  // The way to the wall on the right was written while it was dragged there.
  const toWall = (before.room.outline[1]?.x ?? 0) - (after.machines[0]?.x ?? 0) - 737 / 2;
  expect(written).toContain(formatterFor('us').length(toWall));
  await undoButton(page).click();
  expect(await keptPlan(page)).toEqual(before);
  expect(await undoButton(page).isDisabled()).toBe(true);
});

/** Middle of the front door of the example's machine, where the rack's centre line leaves it. */
const DOOR = { x: 4992, y: 845 };

it('a table keeps a surveyed gap; pulled off it is free, and snaps flush when it comes near a door again', async () => {
  const page = await openPage();
  await chooseInList(page, /Clean table/);
  await typeInto(page, 'Gap', '1/2 in');
  expect((await keptPlan(page)).tables.find(({ role }) => role === 'clean')?.place).toMatchObject({ gap: 12.7 });
  expect(await readVerdicts(page)).toEqual(['stop']);
  const grip = { x: 4800, y: 2000 };
  await drag(page, grip, { x: grip.x - 1500, y: grip.y + 900 });
  const clean = async () => (await keptPlan(page)).tables.find(({ role }) => role === 'clean')?.place;
  const free = await clean();
  if (free?.kind !== 'free') throw new Error('the table is still held');
  expect(await readVerdicts(page)).toContain('stop');
  await screenshot(page, 'table-pulled-off');
  // Its end is brought to some inches from the front door's middle: it is caught and joined exactly.
  const held = { x: grip.x - 1400, y: grip.y + 900 };
  await drag(page, held, { x: held.x + DOOR.x + 60 - free.x, y: held.y + DOOR.y + 80 - free.y });
  expect(await clean()).toEqual({ kind: 'joined', machine: 'machine', side: 'front', gap: 0, offset: 0, skewDeg: 0 });
  expect(await readVerdicts(page)).toEqual([]);
});

it('what a tool would add is shown at the pointer, and not when the pointer leaves the paper', async () => {
  const page = await openPage({ plan: createPlan() });
  await takeTool(page, 'Hand sink');
  const { x, y } = await onScreen(page, 2500, 2000);
  // The list beside the paper is no place for a ghost.
  const beside = (await page.getByRole('tabpanel').boundingBox()) ?? { x: 0, y: 0 };
  await page.mouse.move(beside.x + 20, beside.y + 20);
  const empty = await seePaper(page);
  await page.mouse.move(x, y, { steps: 3 });
  expect(await seePaper(page)).not.toBe(empty);
  await page.mouse.move(beside.x + 20, beside.y + 20, { steps: 3 });
  expect(await seePaper(page)).toBe(empty);
  // The tool is still in hand.
  await page.mouse.click(x, y);
  expect((await keptPlan(page)).things.map(({ kind }) => kind)).toEqual(['hand-sink']);
});
