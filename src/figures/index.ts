export { deriveFigures } from './deriveFigures';
export { figureWords } from './figureWords';
export { readingsOf } from './readingsOf';
export { FIGURES } from './registry';
export * from './types';
