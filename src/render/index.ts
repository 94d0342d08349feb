export type { CanvasContext, CanvasView } from './canvas/context';
export { type CanvasOptions, renderCanvas } from './canvas/renderCanvas';
export { DASHES, FONT_FAMILY, PATTERNS } from './inks';
export { DAY, NIGHT, type Palette, PRINT, palettes } from './palette';
export { renderSvg, type SvgOptions } from './svg/renderSvg';
