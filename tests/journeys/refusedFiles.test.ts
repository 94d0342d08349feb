import { expect, it } from 'vitest';
import { renderPlanText } from '../../src/plan/index.ts';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, openPlan, typeInto } from './paper.ts';

const sound = renderPlanText(examplePlan('cafe-straight'));

/** The sound file with one thing wrong. */
const swap = (from: string, to: string, of = sound): string => {
  const text = of.replace(from, to);
  if (text === of) throw new Error(`nothing was changed: ${from}`);
  return text;
};

const FILES: [name: string, text: string, where: RegExp][] = [
  ['half a file', sound.slice(0, 900), /line \d+, column \d+: /],
  ['not JSON', 'a letter to the chef', /line 1, column 1/],
  ['another document', '{"format":"recipe","version":1}', /not a Rackway plan/],
  ['a newer version', swap('"version": 4', '"version": 5'), /version: the plan has version 5/],
  ['not a number', swap('"ceilingHeight": 2743', '"ceilingHeight": NaN'), /room\.ceilingHeight: NaN is not a finite number/],
  ['without end', swap('"ceilingHeight": 2743', '"ceilingHeight": 1e999'), /room\.ceilingHeight: 1e999 is not a finite number/],
  [
    'walls that cross',
    swap('"wall-bar", "x": 6706', '"wall-bar", "x": 0', swap('"wall-street", "x": 0', '"wall-street", "x": 6706')),
    /room.*: the walls .* cross or touch/,
  ],
  ['two of one name', swap('"id": "wall-store"', '"id": "wall-yard"'), /the id "wall-yard" is already taken/],
  [
    'a machine that is not there',
    swap('"machine": "machine"', '"machine": "ghost"'),
    /tables\[0\]\.place\.machine: there is no machine "ghost"/,
  ],
  ['a key that poisons', swap('"version": 4', '"version": 4, "__proto__": { "isAdmin": true }'), /__proto__: this word cannot be a key/],
  ['a key too many', swap('"version": 4', '"version": 4, "extra": 1'), /extra: this key is not part of a plan/],
  ['too large', `${sound}${' '.repeat(5_000_001 - Buffer.byteLength(sound))}`, /5000001 bytes, more than the 5000000/],
];

it('a refused file says where and why, and what was open stays open', async () => {
  const page = await openPage();
  const before = await keptPlan(page);
  await typeInto(page, 'Meals a day', '555');
  const open = await keptPlan(page);
  const said = [];
  for (const [name, text] of FILES) {
    await openPlan(page, text, `${name}.json`);
    const alert = page.getByRole('alert');
    await alert.filter({ hasText: name }).waitFor();
    said.push(await alert.innerText());
    expect(await keptPlan(page)).toEqual(open);
  }
  await screenshot(page, 'refused-file');
  expect(said).toEqual(
    FILES.map(([name, , where]) => expect.stringMatching(new RegExp(`^${name}\\.json was not opened: .*${where.source}`)) as string),
  );
  expect(await page.evaluate(() => Reflect.get({}, 'isAdmin') as unknown)).toBeUndefined();
  // Still the same work: it can be undone.
  await page.keyboard.press('Control+z');
  expect(await keptPlan(page)).toEqual(before);
});

it('a file refused on the start page is said on the start page', async () => {
  const page = await openPage();
  await page.getByRole('button', { name: 'Plans' }).click();
  const start = page.getByRole('main', { name: 'Plans' });
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), start.getByRole('button', { name: /Open a plan file/ }).click()]);
  await chooser.setFiles({ name: 'torn.json', mimeType: 'application/json', buffer: Buffer.from('{') });
  expect(await start.getByRole('alert').innerText()).toContain('torn.json was not opened');
  await screenshot(page, 'refused-on-start');
});
