import { Resvg } from '@resvg/resvg-js';

/** A picture of an SVG sheet. It sets type in the given font files alone, so that it is the same on every machine. */
export function renderPng(svg: string, fontFiles: string[], dotsPerInch = 200): Buffer {
  const picture = new Resvg(svg, {
    dpi: dotsPerInch,
    fitTo: { mode: 'zoom', value: dotsPerInch / 96 },
    font: { loadSystemFonts: false, fontFiles, defaultFontFamily: 'IBM Plex Sans' },
  });
  return picture.render().asPng();
}
