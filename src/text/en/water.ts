import type { Wording } from '../wording';

export const water: Wording<Record<never, never>> = {};
