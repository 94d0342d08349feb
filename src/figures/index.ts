export { deriveFigures } from './deriveFigures';
export { FIGURES } from './registry';
export * from './types';
