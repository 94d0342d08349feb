import type { Wording } from '../wording';

export const people: Wording<Record<never, never>> = {};
