import { type FigureRule, inOrder } from '../../rules';

/** Every figure, in the order in which they are shown: each file of a topic's folder of figures. */
export const FIGURES: readonly FigureRule[] = inOrder(
  Object.values(import.meta.glob<FigureRule>('../*/figures/*.ts', { eager: true, import: 'rule' })),
);
