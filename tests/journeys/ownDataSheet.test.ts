import AxeBuilder from '@axe-core/playwright';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { type Plan, parseDataSheet } from '../../src/plan/index.ts';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { chooseInList, field, keptPlan, typeInto, valueOf } from './paper.ts';

const sheetOf = ({ machines, sheets }: Plan) => sheets.find(({ id }) => id === machines[0]?.sheet);

/** The card of the machine with its data sheet unfolded. */
async function openSheet(page: Page): Promise<void> {
  await page.locator('.station[data-station="machine"]').click();
  await part(page, 'Data sheet').click();
  await page.getByRole('button', { name: 'Open a data sheet' }).waitFor();
}

const part = (page: Page, title: string) => page.locator('.card summary').filter({ hasText: new RegExp(`^${title}$`) });
const say = (page: Page, name: string) => page.getByRole('tabpanel').getByRole('button', { name, exact: true });
const findingOf = (page: Page, check: string) => page.locator(`.finding[data-check="${check}"]`);

/** What axe finds wrong in the card and the list under it: rule, weight and the first element. */
async function violations(page: Page): Promise<string[]> {
  const { violations: found } = await new AxeBuilder({ page }).include('.rail').analyze();
  return found.map(({ id, impact, nodes }) => `${id} (${impact}): ${nodes[0]?.html}`);
}

it('a data sheet is made one’s own and changed: the findings follow, and all of it is undone', async () => {
  const page = await openPage({ plan: examplePlan('care-home-direct-vent') });
  const before = await keptPlan(page);
  await openSheet(page);
  expect(await page.locator('.data-sheet input, .data-sheet textarea').count()).toBe(0);
  await part(page, 'Size and doors').click();
  expect(await page.locator('.data-sheet').innerText()).toMatch(/Footprint, left to right\s+2′\s5″/);
  await say(page, 'Make this data sheet my own').click();
  expect((await keptPlan(page)).machines[0]?.sheet).toBe('direct-vent-1');
  // The button is gone; the keyboard stands in the first field of the form.
  expect(await page.evaluate(() => document.activeElement?.matches('.data-sheet input, .data-sheet textarea'))).toBe(true);
  await screenshot(page, 'own-sheet');

  // The run is beyond the limit of the family; this machine's own plate allows more.
  await part(page, 'Vent').click();
  const runs = findingOf(page, 'run-equivalent-length');
  const run = async () => ((await runs.count()) === 0 ? 'clear' : runs.first().getAttribute('data-verdict'));
  expect(await run()).toBe('stop');
  await typeInto(page, 'Longest run', '80 ft');
  await expect.poll(run).toBe('clear');
  await screenshot(page, 'own-sheet-vent');

  // A wider footprint moves the doors, and the tables with them.
  await typeInto(page, 'Footprint, left to right', '40 in');
  expect(sheetOf(await keptPlan(page))).toMatchObject({ width: 1016, vent: { maxEquivalentLength: 24_384 } });
  await screenshot(page, 'own-sheet-wide');

  // Too narrow for where its controls are: refused, and the value stays.
  await typeInto(page, 'Footprint, left to right', '20 in');
  expect(await page.getByRole('tabpanel').getByRole('alert').innerText()).toMatch(
    /^Front, at the right corner, ends along its side: the controls end at/,
  );
  await screenshot(page, 'own-sheet-refused');
  await field(page, 'Footprint, left to right').press('Escape');
  expect(await valueOf(field(page, 'Footprint, left to right'))).toBe('3′ 4″');

  await page.locator('.surface').focus();
  for (const _ of [1, 2, 3]) await page.keyboard.press('Control+z');
  expect(await keptPlan(page)).toEqual(before);
  await expect.poll(run).toBe('stop');
  await say(page, 'Make this data sheet my own').waitFor();
});

it('lists grow and shrink; what is in use stays, and says why', async () => {
  const page = await openPage({ plan: examplePlan('care-home-direct-vent') });
  await openSheet(page);
  await say(page, 'Make this data sheet my own').click();
  await part(page, 'Controls').click();
  await say(page, 'Add a position').click();
  await typeInto(page, 'Name', 'On the left side', 2);
  const kept = await keptPlan(page);
  expect(sheetOf(kept)?.controls.map(({ name }) => name)).toEqual([
    'Front, at the left corner',
    'Front, at the right corner',
    'On the left side',
  ]);
  const used = 1 + (sheetOf(kept)?.controls.findIndex(({ id }) => id === kept.machines[0]?.controls) ?? 0);
  await say(page, `Remove position ${used}`).click();
  expect(await page.getByRole('alert').innerText()).toMatch(/stays: the controls of machine \d are there\./);
  await say(page, 'Remove position 3').click();
  expect(sheetOf(await keptPlan(page))?.controls).toHaveLength(2);
  await part(page, 'Size and doors').click();
  await field(page, 'Door at the right').click();
  expect(await page.getByRole('tabpanel').getByRole('alert').innerText()).toMatch(
    /^The door at the right stays: the (soiled|clean) table is joined there/,
  );
  await part(page, 'Conversion steps').click();
  await typeInto(page, 'Step', 'Switch off and shut the water.', 0);
  expect(sheetOf(await keptPlan(page))?.conversion.toCorner[0]).toBe('Switch off and shut the water.');
});

it('one data sheet goes into a file and comes back; a wrong file is refused and nothing is lost', async () => {
  const page = await openPage({ plan: examplePlan('care-home-direct-vent') });
  await openSheet(page);
  await say(page, 'Make this data sheet my own').click();
  await typeInto(page, 'Name of the machine', 'Direct vent of the care home');
  const [file] = await Promise.all([page.waitForEvent('download'), say(page, 'Save this data sheet').click()]);
  expect(file.suggestedFilename()).toBe('direct-vent-of-the-care-home.rackway-sheet.json');
  const chunks: Buffer[] = [];
  for await (const chunk of await file.createReadStream()) chunks.push(chunk as Buffer);
  const text = Buffer.concat(chunks).toString('utf8');
  const before = await keptPlan(page);
  expect(parseDataSheet(text)).toEqual({ ok: true, sheet: sheetOf(before) });

  await choose(page, text.replace('"width": 737', '"width": "wide"'), 'wrong.json');
  expect(await page.getByRole('alert').innerText()).toContain(
    'wrong.json was not opened: sheet.width: expected a number, found text "wide".',
  );
  expect(await keptPlan(page)).toEqual(before);
  await page.getByRole('button', { name: 'Put away' }).click();

  await choose(page, text.replaceAll('Direct vent of the care home', 'Direct vent, second'), 'second.json');
  await page.getByRole('status').filter({ hasText: 'Opened second.json' }).waitFor();
  const after = await keptPlan(page);
  expect(after.sheets.map(({ name }) => name)).toEqual(['Direct vent of the care home', 'Direct vent, second']);
  expect(sheetOf(after)?.name).toBe('Direct vent, second');
  await say(page, 'Delete Direct vent, second').click();
  expect(await page.getByRole('alert').innerText()).toMatch(/“Direct vent, second” stays: machine \d uses it\./);
  await say(page, 'Delete Direct vent of the care home').click();
  expect((await keptPlan(page)).sheets).toHaveLength(1);
});

/** Gives a file to “Open a data sheet”. */
async function choose(page: Page, text: string, name: string): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), say(page, 'Open a data sheet').click()]);
  await chooser.setFiles({ name, mimeType: 'application/json', buffer: Buffer.from(text) });
}

const PARTS = ['Size and doors', 'Controls', 'Connections', 'Water', 'Electrical versions', 'Conversion steps'];

it('axe finds nothing in a sheet that is read, nor in the form', async () => {
  const page = await openPage({ plan: examplePlan('care-home-direct-vent') });
  await openSheet(page);
  await part(page, 'Vent').click();
  expect(await violations(page)).toEqual([]);
  await say(page, 'Make this data sheet my own').click();
  for (const title of PARTS) await part(page, title).click();
  expect(await violations(page)).toEqual([]);
});

it.each([
  { width: 1440, height: 900 },
  { width: 1024, height: 768 },
])('the form has room at $width × $height', async ({ width, height }) => {
  const page = await openPage({ plan: examplePlan('care-home-direct-vent'), width, height });
  await openSheet(page);
  await part(page, 'Vent').click();
  await screenshot(page, `sheet-read-${width}`);
  await say(page, 'Make this data sheet my own').click();
  expect(await isOpen(page, 'Vent')).toBe(true);
  for (const title of PARTS) await part(page, title).click();
  // Nothing is wider than the card, and nothing in it makes the page scroll.
  expect(await page.locator('.card').evaluate((card) => card.scrollWidth - card.clientWidth)).toBe(0);
  expect(await page.evaluate(() => document.documentElement.scrollHeight)).toBe(height);
  for (const title of ['Data sheet', 'Connections', 'Water', 'Vent']) {
    await part(page, title).evaluate((summary) => summary.scrollIntoView({ block: 'start' }));
    await screenshot(page, `sheet-${width}-${title.toLowerCase().replaceAll(' ', '-')}`);
  }
});

const isOpen = (page: Page, title: string) => part(page, title).evaluate((summary) => (summary.parentElement as HTMLDetailsElement).open);

it('several machines get their own data sheet at once', async () => {
  const base = examplePlan('care-home-direct-vent');
  const [machine] = base.machines;
  const plan = { ...base, machines: [machine!, { ...machine!, id: 'machine-9', x: machine!.x + 1500, y: machine!.y + 1500 }] };
  const page = await openPage({ plan });
  await chooseInList(page, /Direct vent/);
  await page.getByRole('tab', { name: 'Everything on the plan' }).click();
  await page
    .getByRole('tabpanel')
    .getByRole('button', { name: /Direct vent/ })
    .nth(1)
    .click({ modifiers: ['Shift'] });
  await part(page, 'Data sheet').click();
  await say(page, 'Make this data sheet my own').click();
  expect((await keptPlan(page)).machines.map(({ sheet }) => sheet)).toEqual(['direct-vent-1', 'direct-vent-1']);
  await screenshot(page, 'sheet-two-machines');
});
