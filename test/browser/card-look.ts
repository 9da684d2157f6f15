/** Cards by chance, as a browser draws them. */
import type { Page } from 'playwright-core';
import words from '#content/cards/card.json' with { type: 'json' };
import type { CardChoices } from '#core/card/fields.ts';
import { writeCard } from '#core/card/link.ts';
import type { Inputs } from '#core/kit/outcome.ts';
import type { UnitSystem } from '#core/kit/units.ts';
import { randomFrom } from '../core/kit/random.ts';
import { anyChoices } from '../islands/card/choices.ts';

export const linkOf = ({ blocks, inputs, calls }: CardChoices, units: UnitSystem = 'metric'): string => `/card/?${writeCard({ blocks, inputs: inputs as Inputs, calls, units })}`;
/** The same card for the same number, always. */
export const chanceLink = (k: number): string => linkOf(anyChoices(randomFrom(5000 + k)), k % 2 === 0 ? 'metric' : 'imperial');

/** Type outside its side, or over other type, as the browser has set it; in the units of the drawing, which are mm. */
const clashes = (page: Page): Promise<string[]> =>
  page.evaluate(() => [...document.querySelectorAll<SVGSVGElement>('.card-sides svg')].flatMap((svg) => {
    const { width, height } = svg.viewBox.baseVal;
    const type = [...svg.querySelectorAll('text')].map((text) => {
      const size = Number(text.getAttribute('font-size'));
      const [start, end] = [text.getStartPositionOfChar(0), text.getEndPositionOfChar(text.getNumberOfChars() - 1)];
      return { text: text.textContent, left: start.x, right: end.x, top: start.y - 0.72 * size, bottom: start.y + 0.21 * size };
    });
    const out = type.filter((t) => t.left < 0 || t.top < 0 || t.right > width || t.bottom > height);
    const most = 0.05;
    const over = type.flatMap((a, i) => type.slice(i + 1).filter((b) => a.left < b.right - most && b.left < a.right - most && a.top < b.bottom - most && b.top < a.bottom - most).map((b) => `"${a.text}" over "${b.text}"`));
    return [...out.map((t) => `"${t.text}" is cut off`), ...over];
  }));

/** What is wrong with the card of an address: badly drawn, or refused without words, or printed all the same. */
export const lookAt = async (page: Page, address: string): Promise<{ faults: string[]; refused: boolean }> => {
  await page.goto(address);
  await page.locator('html:not([data-linked]) .card-sides svg text').first().waitFor();
  const faults = await clashes(page);
  if ((await page.locator('.card-sides svg text').count()) < 4) faults.push('hardly any type');
  const print = page.getByRole('button', { name: words.print, exact: true });
  const said = await page.locator('.finding.stop').allInnerTexts();
  if (said.length === 0) return { faults: (await print.isEnabled()) ? faults : [...faults, 'refused without a word'], refused: false };
  if (!said.every((text) => /^Does not fit: \S/.test(text))) faults.push(`said: ${said.join()}`);
  if (await print.isEnabled()) faults.push('to be printed though it does not fit');
  if ((await page.locator('.card-page').count()) > 0) faults.push('on paper though it does not fit');
  return { faults, refused: true };
};
