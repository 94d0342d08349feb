import type { Wording } from '../wording';

export const heat: Wording<Record<never, never>> = {};
