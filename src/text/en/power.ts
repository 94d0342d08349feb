import type { Wording } from '../wording';

export const power: Wording<Record<never, never>> = {};
