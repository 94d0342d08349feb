import type { Wording } from '../wording';

export const room: Wording<Record<never, never>> = {};
