import type { Wording } from '../wording';

export const hood: Wording<Record<never, never>> = {};
