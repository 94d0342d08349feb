export { type CanvasContext } from './canvas/context';
export { type CanvasOptions, renderCanvas } from './canvas/renderCanvas';
export { DAY, NIGHT, type Palette, PRINT, palettes } from './palette';
export { renderSvg } from './svg/renderSvg';
