import { expect, it } from 'vitest';
import { openPage, screenshot } from './openPage.ts';
import { readVerdicts } from './paper.ts';

/** What each example room is told to show on the start page. */
const ROOMS: [title: RegExp, verdicts: string[], said: RegExp[]][] = [
  [/^Plan of School kitchen/, [], []],
  [/^Plan of Café/, ['stop', 'stop', 'stop', 'stop', 'stop'], [/order says/, /gap of/, /falls .+ away/, /narrows/, /hood stands only/]],
  [/^Plan of Care home/, ['stop'], [/run counts as 70′.+two elbows/]],
  [/^Plan of Hotel/, ['ask', 'ask'], [/^ceiling/i]],
];

it('each example opens from the start page with the findings that are told', async () => {
  const page = await openPage();
  for (const [title, verdicts, said] of ROOMS) {
    await page.getByRole('button', { name: 'Plans' }).click();
    const room = page.getByRole('button', { name: title });
    // The tally on the start page is the ledger's own.
    const tally = room.locator('.tally:not(.mark-clear)');
    await room.locator('.mark-clear').first().waitFor();
    const told = verdicts.length === 0 ? [] : [`${verdicts.length}${verdicts[0]}`];
    expect((await tally.allInnerTexts()).map((text) => text.replace(/\s/g, ''))).toEqual(told);
    await room.click();
    await page.getByRole('navigation', { name: /The line/ }).waitFor();
    expect(await readVerdicts(page)).toEqual(verdicts);
    const sentences = await page.locator('.ledger .finding, .ledger .question').allInnerTexts();
    for (const words of said) expect(sentences.some((text) => words.test(text.replace(/\s+/g, ' ')))).toBe(true);
    await screenshot(page, `example-${verdicts.length}-${verdicts[0] ?? 'clear'}`);
  }
  // The last of them, the hotel, has no hood, and no finding asks for one.
  await page.getByRole('tab', { name: 'Everything on the plan' }).click();
  expect(await page.getByRole('tabpanel').getByRole('button', { name: /hood/i }).count()).toBe(0);
  await page.getByRole('button', { name: /checks hold/ }).click();
  expect(await page.locator('.finding[data-check="hood-where-needed"]').getAttribute('data-verdict')).toBe('clear');
});
