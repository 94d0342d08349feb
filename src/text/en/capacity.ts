import type { Wording } from '../wording';

export const capacity: Wording<Record<never, never>> = {};
