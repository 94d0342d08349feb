import type { Wording } from '../wording';

export const cleanliness: Wording<Record<never, never>> = {};
