import { writeFile } from 'node:fs/promises';
import { renderSvg } from '../render';
import type { Sheet } from '../sheets';
import { systemReason } from './readPlan';
import { renderPng } from './renderPng';
import { shippedFile } from './shippedFiles';

/** Writes a sheet as SVG or PNG, by the name's ending. Why it could not be written; null when it was. */
export async function writeSheet(sheet: Sheet, out: string): Promise<string | null> {
  const svg = renderSvg(sheet);
  try {
    await writeFile(out, /\.png$/i.test(out) ? await renderPicture(svg) : svg);
    return null;
  } catch (error) {
    return `${out}: ${systemReason(error)}`;
  }
}

const renderPicture = (svg: string): Promise<Buffer> =>
  renderPng(
    svg,
    ['Regular', 'SemiBold'].map((weight) => shippedFile('fonts', `IBMPlexSans-${weight}.ttf`)),
  );
