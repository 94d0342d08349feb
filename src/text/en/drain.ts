import type { Wording } from '../wording';

export const drain: Wording<Record<never, never>> = {};
