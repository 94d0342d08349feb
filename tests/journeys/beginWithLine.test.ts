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
  for (const [family, configuration, hand] of LINES) {
    await page.getByRole('button', { name: 'Plans' }).click();
    const start = page.getByRole('main', { name: 'Plans' });
    await start.getByLabel('Machine family').selectOption(family);
    await start.getByLabel('Configuration').selectOption(configuration);
    await start.getByLabel(/^Hand/).selectOption(hand);
    await start.getByRole('button', { name: 'Lay the line out' }).click();
    await page.getByRole('navigation', { name: 'The line, from drop-off to storage' }).waitFor();
    const row = `${family} ${configuration} ${hand}`;
    expect(await page.locator('.station[data-absent="true"]').count(), row).toBe(0);
    const open = (await readVerdicts(page)).filter((verdict) => verdict !== 'ask');
    expect(open, row).toEqual([]);
    const plan = await keptPlan(page);
    expect(plan.machines[0]?.sheet).toBe(family);
    const sides = plan.tables.map(({ place }) => (place.kind === 'joined' ? place.side : 'free'));
    expect(sides.sort(), row).toEqual(configuration === 'straight' ? ['left', 'right'] : ['front', configuration.split('-')[0]].sort());
    await screenshot(page, `line-${configuration}-${hand}`);
  }
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
