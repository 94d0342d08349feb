import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openPage, screenshot } from './openPage.ts';
import { chooseInList, field, keptPlan, onScreen, typeInto, valueOf } from './paper.ts';

const legOf = async (page: Page) => (await keptPlan(page)).tables.find(({ role }) => role === 'soiled')?.legs[0]?.length;

it('a length is typed as people type it', async () => {
  const page = await openPage();
  await chooseInList(page, /Soiled table/);
  const typed = [];
  for (const text of [`9' 4 1/2"`, '112.5 in', '2857 mm', '9 ft 4 ½', '2.9 m']) {
    await typeInto(page, 'Length', text);
    typed.push([text, await legOf(page), await valueOf(field(page, 'Length'))]);
  }
  expect(typed).toEqual([
    [`9' 4 1/2"`, expect.closeTo(2857.5, 6), '9′ 4 ½″'],
    ['112.5 in', expect.closeTo(2857.5, 6), '9′ 4 ½″'],
    ['2857 mm', 2857, '9′ 4 ½″'],
    ['9 ft 4 ½', expect.closeTo(2857.5, 6), '9′ 4 ½″'],
    ['2.9 m', 2900, '9′ 6 ³⁄₁₆″'],
  ]);
});

it('a refused text says why, where it can be seen, and the value stays', async () => {
  const page = await openPage();
  await chooseInList(page, /Soiled table/);
  const before = await keptPlan(page);
  for (const [text, reason] of [
    ['a metre', /not a length/],
    ['-5', /at least/],
    ['9e99', /./],
  ] as const) {
    await typeInto(page, 'Length', text);
    const problem = page.getByRole('tabpanel').getByRole('alert');
    expect(await problem.innerText()).toMatch(reason);
    expect(await isInSight(page)).toBe(true);
    expect(await field(page, 'Length').getAttribute('aria-invalid')).toBe('true');
  }
  await screenshot(page, 'refused-text');
  expect(await keptPlan(page)).toEqual(before);
  await field(page, 'Length').press('Escape');
  expect(await valueOf(field(page, 'Length'))).toBe('9′ 6 ³⁄₁₆″');
  expect(await page.getByRole('tabpanel').getByRole('alert').count()).toBe(0);
});

/** Whether the reason lies within the card, not scrolled out of it. */
const isInSight = (page: Page) =>
  page.evaluate(() => {
    const [card, problem] = ['.card', '.card .problem'].map((part) => document.querySelector(part)?.getBoundingClientRect());
    return card !== undefined && problem !== undefined && problem.bottom <= card.bottom + 1 && problem.top >= card.top;
  });

it('other properties take their own units, and choices take effect', async () => {
  const page = await openPage();
  await chooseInList(page, /Soiled table/);
  await typeInto(page, 'Fall to the machine', '3/8 in per ft');
  await field(page, 'People stand').selectOption({ label: 'on the right' });
  await page.keyboard.press('Escape');
  const table = (await keptPlan(page)).tables.find(({ role }) => role === 'soiled');
  expect(table?.deck).toMatchObject({ kind: 'fall', fall: expect.closeTo(0.375 / 12, 9) as number });
  expect(table?.operatorSide).toBe('right');
});

it('a dimension on the canvas is pressed and typed into in its place', async () => {
  const page = await openPage();
  const before = await keptPlan(page);
  const input = page.locator('.inline-field input');
  await pressDimension(page);
  expect(await valueOf(input)).toBe('12′ 0″');
  await screenshot(page, 'dimension-typed');
  await page.keyboard.type('long');
  await page.keyboard.press('Enter');
  expect(await page.locator('.inline-field').getByRole('alert').innerText()).toContain('not a length');
  expect(await keptPlan(page)).toEqual(before);
  await page.keyboard.press('Escape');
  expect(await input.count()).toBe(0);
  expect(await page.evaluate(() => document.activeElement?.className)).toBe('surface');
  // What Escape left behind is not kept, what Enter ends is.
  await pressDimension(page);
  await page.keyboard.type('11 ft');
  await page.keyboard.press('Escape');
  expect(await keptPlan(page)).toEqual(before);
  await pressDimension(page);
  await page.keyboard.type(`12' 6"`);
  await page.keyboard.press('Enter');
  const { outline } = (await keptPlan(page)).room;
  const [first, last] = [outline[0], outline.at(-1)];
  expect((last?.y ?? 0) - (first?.y ?? 0)).toBeCloseTo(3810, 6);
});

/** The figure of the dining-room wall, 12 ft long, stands left of its middle; it is looked for as an eye would. */
async function pressDimension(page: Page): Promise<void> {
  const middle = await onScreen(page, 0, 3658 / 2);
  const box = (await page.locator('.surface').boundingBox()) ?? { x: 0 };
  for (let x = middle.x - 40; x > box.x; x -= 8) {
    await page.mouse.click(x, middle.y);
    const input = page.locator('.inline-field input');
    if ((await input.count()) > 0 && (await input.inputValue()).startsWith('12′')) return;
    await page.keyboard.press('Escape');
  }
  throw new Error('no figure can be pressed');
}
