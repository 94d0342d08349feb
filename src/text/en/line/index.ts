import { joints } from './joints';
import { orders } from './orders';
import { runs } from './runs';
import { tables } from './tables';

/** The words of the line: its order, its joints, its tables, and the way of the racks. */
export const line = { ...orders, ...joints, ...tables, ...runs };
