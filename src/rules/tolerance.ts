import * as units from '../units';

/** Slack for comparing lengths and ratios, so that a value set exactly on its limit holds at any rotation. */
export const TOLERANCE = 1e-6;

export const isAtMost = (value: number, limit: number): boolean => units.isAtMost(value, limit, TOLERANCE);

export const isAtLeast = (value: number, limit: number): boolean => units.isAtLeast(value, limit, TOLERANCE);
