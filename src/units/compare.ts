/**
 * At most, but for what rounding adds. Without a slack of its own that is the rounding of a conversion, a part in 10⁹ of the limit: right
 * for numbers that were typed and converted, whatever their unit is. What was measured in the drawing has been turned and projected, its
 * rounding does not shrink with the limit, and a limit there may be 0: such a caller gives a slack in the unit itself.
 */
export const isAtMost = (value: number, limit: number, slack: number = conversionRounding(limit)): boolean => value <= limit + slack;

/** At least, in the same way. */
export const isAtLeast = (value: number, limit: number, slack: number = conversionRounding(limit)): boolean => value >= limit - slack;

const conversionRounding = (limit: number) => 1e-9 * Math.abs(limit);
