export { deriveFigures } from './deriveFigures';
export { figureWords } from './figureWords';
export { FIGURES } from './registry';
export * from './types';
