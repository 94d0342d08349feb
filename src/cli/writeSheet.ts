import { writeFile } from 'node:fs/promises';
import { renderSvg } from '../render';
import type { Sheet } from '../sheets';
import { systemReason } from './readPlan';
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

/** The rasteriser is loaded only when a picture is asked for. */
async function renderPicture(svg: string): Promise<Buffer> {
  const { renderPng } = await import('./renderPng');
  return renderPng(
    svg,
    ['Regular', 'SemiBold'].map((weight) => shippedFile('fonts', `IBMPlexSans-${weight}.ttf`)),
  );
}
