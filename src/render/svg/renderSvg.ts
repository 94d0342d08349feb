import type { Layer, Prim } from '../../drawing';
import type { Sheet } from '../../sheets';
import { explodeSymbol } from '../explodeSymbol';
import { type Palette, PRINT } from '../palette';
import { el, escapeXml, num } from './el';
import { renderPrim } from './renderPrim';

export interface SvgOptions {
  /** White paper when it is left out. */
  palette?: Palette;
  hiddenLayers?: ReadonlySet<Layer>;
}

/** A sheet as one SVG document in true scale: its width and height are paper millimetres, and so is each unit of its view box. */
export function renderSvg(sheet: Sheet, { palette = PRINT, hiddenLayers }: SvgOptions = {}): string {
  const { widthMm, heightMm } = sheet;
  const page = el('rect', { x: 0, y: 0, width: widthMm, height: heightMm, fill: palette.paper });
  const shown = hiddenLayers === undefined ? sheet.drawing : sheet.drawing.filter((prim) => !hiddenLayers.has(prim.layer));
  const document = el(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: `${num(widthMm)}mm`,
      height: `${num(heightMm)}mm`,
      viewBox: `0 0 ${num(widthMm)} ${num(heightMm)}`,
      'stroke-linejoin': 'round',
    },
    el('title', {}, escapeXml(sheet.title)),
    page,
    ...groupByLayer(shown).map(([layer, prims]) => el('g', { 'data-layer': layer }, `\n${renderAll(prims, palette)}`)),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${document}\n`;
}

function renderAll(prims: readonly Prim[], palette: Palette): string {
  const plain = prims.flatMap((prim) => (prim.kind === 'symbol' ? explodeSymbol(prim, 1) : [prim]));
  return plain.map((prim) => `${renderPrim(prim, palette)}\n`).join('');
}

/** Neighbours of one layer, in their order: back to front stays back to front. */
function groupByLayer(prims: readonly Prim[]): [Layer, Prim[]][] {
  const groups: [Layer, Prim[]][] = [];
  for (const prim of prims) {
    const last = groups.at(-1);
    if (last !== undefined && last[0] === prim.layer) last[1].push(prim);
    else groups.push([prim.layer, [prim]]);
  }
  return groups;
}
