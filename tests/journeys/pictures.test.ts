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
