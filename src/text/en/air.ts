import type { Wording } from '../wording';

export const air: Wording<Record<never, never>> = {};
