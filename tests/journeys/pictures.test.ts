import AxeBuilder from '@axe-core/playwright';
import { expect, it } from 'vitest';
import { examplePlan } from '../support/examplePlans.ts';
import { openPage, screenshot } from './openPage.ts';
import { chooseInList, keptPlan } from './paper.ts';

it('temperatures at a plate are pasted into the machine’s card, refused by line, kept, drawn and taken back', async () => {
  const page = await openPage({ plan: examplePlan('school-corner') });
  const before = (await keptPlan(page)).machines[0]?.hookUp.plateRecord;
  await chooseInList(page, /^1/);
  await page.getByText('Temperatures at a plate', { exact: false }).first().click();
  const lines = page.getByRole('tabpanel').getByLabel(/thermometer showed/);
  await lines.fill('s;°F\n0;95\n20;148\n15;161');
  await page.getByRole('button', { name: 'Keep the record' }).click();
  expect(await page.locator('.plate-record [role="alert"]').innerText()).toMatch(/^Line 4: 15\ss does not come after 20\ss/);
  expect((await keptPlan(page)).machines[0]?.hookUp.plateRecord).toEqual(before);
  await lines.fill('s;°F\n0;95\n20;148\n40;166\n70;166\n80;140');
  await lines.press('Control+Enter');
  expect((await keptPlan(page)).machines[0]?.hookUp.plateRecord.map(({ at }) => at)).toEqual([0, 20, 40, 70, 80]);
  const picture = page.getByRole('img', { name: /Temperatures at the plate over 80 s/ });
  await picture.scrollIntoViewIfNeeded();
  await screenshot(page, 'heat-units');
  expect(await picture.getAttribute('aria-label')).toMatch(/of the 3600 that a cycle needs/);
  await page.getByRole('button', { name: 'Undo' }).click();
  expect((await keptPlan(page)).machines[0]?.hookUp.plateRecord).toEqual(before);
});

it('a hood’s rules stand side by side, and one governs; a run’s fan meets its system', async () => {
  const school = await openPage({ plan: examplePlan('school-corner') });
  await chooseInList(school, /hood/i);
  const bars = school.getByRole('img', { name: /^Exhaust under each rule/ });
  expect((await bars.getAttribute('aria-label'))?.match(/governs/g)).toHaveLength(1);
  expect((await new AxeBuilder({ page: school }).analyze()).violations).toEqual([]);
  const home = await openPage({ plan: examplePlan('care-home-direct-vent'), width: 1024, height: 768, touch: true });
  await chooseInList(home, /run/i);
  const curves = home.getByRole('img', { name: /^Curves of fan and run/ });
  await curves.scrollIntoViewIfNeeded();
  await screenshot(home, 'fan-curve');
  expect(await curves.getAttribute('aria-label')).toMatch(/They meet at .+ The run must carry/);
});

it.each([
  { name: 'lift-desk', width: 1440, height: 900, touch: false },
  { name: 'lift-tablet', width: 1024, height: 768, touch: true },
])('what each multiplier of a lift leaves stands side by side, and what costs most is named: $name', async ({ name, ...size }) => {
  const page = await openPage({ plan: examplePlan('school-corner'), ...size });
  await chooseInList(page, /^1/);
  const lifts = [page.getByRole('img', { name: /^Off the clean table/ }), page.getByRole('img', { name: /^Onto the lowest shelf/ })];
  for (const [i, lift] of lifts.entries()) {
    const limit = await page.locator('[data-figure="lifting-limit"] summary b').nth(i).innerText();
    const said = (await lift.getAttribute('aria-label')) ?? '';
    expect(said).toContain(`${limit} may be lifted. What costs most: how far from the body.`);
    expect(said.match(/, costs most/g)).toHaveLength(1);
    expect(await lift.locator('text').allTextContents()).toContain(limit);
  }
  for (const paper of ['day', 'night']) {
    if (paper === 'night') await page.getByRole('button', { name: 'Night paper' }).click();
    await lifts[1]?.scrollIntoViewIfNeeded();
    await screenshot(page, `${name}-${paper}`);
    expect((await new AxeBuilder({ page }).analyze()).violations).toEqual([]);
  }
});

it('a lift whose limit asks has no picture', async () => {
  const plan = examplePlan('school-corner');
  const page = await openPage({ plan: { ...plan, demand: { ...plan.demand, restMinutes: null } } });
  await chooseInList(page, /^1/);
  await page.locator('[data-figure="lifting-limit"]').waitFor();
  expect(await page.getByRole('img', { name: /costs most/ }).count()).toBe(0);
});
