import type { Wording } from '../wording';

export const duct: Wording<Record<never, never>> = {};
