import { stampResolution } from './stampResolution';

/** A picture of an SVG sheet, with its resolution in the file, so that it prints to scale. It is set in the given font files alone, the same on every machine. */
export async function renderPng(svg: string, fontFiles: string[], dotsPerInch = 200): Promise<Buffer> {
  // The rasteriser is loaded only when a picture is asked for: every other command starts sooner.
  const { Resvg } = await import('@resvg/resvg-js');
  const picture = new Resvg(svg, {
    // The rasteriser takes 96 dots for an inch; the zoom makes them more.
    fitTo: { mode: 'zoom', value: dotsPerInch / 96 },
    font: { loadSystemFonts: false, fontFiles, defaultFontFamily: 'IBM Plex Sans' },
  });
  return stampResolution(picture.render().asPng(), dotsPerInch);
}
