import { expect, it } from 'vitest';
import { openPage, screenshot } from './openPage.ts';
import { keptPlan, readVerdicts } from './paper.ts';

/** Each configuration in each hand, and each machine family once. */
const LINES = [
  ['recirculating-hot-water', 'straight', 'left-to-right'],
  ['fresh-water-hot-water', 'straight', 'right-to-left'],
  ['chemical-sanitising', 'left-front', 'left-to-right'],
  ['tall-door', 'left-front', 'right-to-left'],
  ['direct-vent', 'right-front', 'left-to-right'],
  ['heat-recovery', 'right-front', 'right-to-left'],
] as const;

it('each configuration and hand begins as a line with nothing wrong', async () => {
  const page = await openPage();
  const begun = [];
  for (const [family, configuration, hand] of LINES) {
    await page.getByRole('button', { name: 'Plans' }).click();
    const start = page.getByRole('main', { name: 'Plans' });
    await start.getByLabel('Machine family').selectOption(family);
    await start.getByLabel('Configuration').selectOption(configuration);
    await start.getByLabel(/^Hand/).selectOption(hand);
    await start.getByRole('button', { name: 'Lay the line out' }).click();
    await page.getByRole('navigation', { name: 'The line, from drop-off to storage' }).waitFor();
    const { machines, tables } = await keptPlan(page);
    begun.push({
      line: [machines[0]?.sheet, configuration, hand],
      sides: new Set(tables.map(({ place }) => (place.kind === 'joined' ? place.side : 'free'))),
      absent: await page.locator('.station[data-absent="true"] .name').allInnerTexts(),
      wrong: (await readVerdicts(page)).filter((verdict) => verdict !== 'ask'),
    });
    await screenshot(page, `line-${configuration}-${hand}`);
  }
  const sides = { straight: ['left', 'right'], 'left-front': ['left', 'front'], 'right-front': ['right', 'front'] };
  expect(begun).toEqual(LINES.map((line) => ({ line, sides: new Set(sides[line[1]]), absent: [], wrong: [] })));
});

it('an empty room says that it has no machine, and checks nothing', async () => {
  const page = await openPage();
  await page.getByRole('button', { name: 'Plans' }).click();
  await page.getByRole('button', { name: 'An empty room' }).click();
  await page.getByText('No machine in this room yet.').waitFor();
  await page.getByText('Nothing to check yet.').waitFor();
  expect(await readVerdicts(page)).toEqual([]);
  expect((await keptPlan(page)).machines).toEqual([]);
  await screenshot(page, 'empty-room');
  await page.getByRole('button', { name: 'Begin with a line' }).click();
  await page.getByRole('heading', { name: 'Begin with a line' }).waitFor();
});
