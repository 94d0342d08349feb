import { mitredBend, type Outcome, rectangularBend, roundedBend } from '../../engineering';
import type { PlacedRun } from '../../scene';

/** Directions that differ by less are one. */
const STRAIGHT_ON_DEG = 1e-6;

/**
 * Sum of the loss coefficients of a run's bends, by angle and radius. The friction along them is in the run's length.
 * A rectangular bend of the radius that the table holds is taken from it, the worse way about; any other counts as round.
 */
export function bendCoefficients({ run, bends }: PlacedRun, radiusRatio: number, frictionFactor: number): Outcome {
  let sum = 0;
  for (const { angleDeg } of bends) {
    if (angleDeg < STRAIGHT_ON_DEG) continue;
    const bend = measureBend(run.duct.sides, { angleDeg, radiusRatio, frictionFactor });
    if (!bend.ok) return bend;
    sum += bend.value;
  }
  return { ok: true, value: sum };
}

interface Bend {
  angleDeg: number;
  radiusRatio: number;
  frictionFactor: number;
}

type Sides = PlacedRun['run']['duct']['sides'];

function measureBend(sides: Sides, { angleDeg, radiusRatio, frictionFactor }: Bend): Outcome {
  if (radiusRatio === 0) return mitredBend({ angleDeg });
  if (sides !== null && isInTable(sides, radiusRatio)) return worseWay(sides, angleDeg);
  return roundedBend({ angleDeg, radiusRatio, frictionFactor, length: 'without-length' });
}

/** The one radius, over the width, and the shapes for which values of rectangular bends are held. */
const isInTable = ({ width, height }: NonNullable<Sides>, radiusRatio: number) =>
  Math.abs(radiusRatio - 1.5) < 1e-9 && Math.max(width, height) <= 2 * Math.min(width, height);

function worseWay({ width, height }: NonNullable<Sides>, angleDeg: number): Outcome {
  const ways = [height / width, width / height].map((heightRatio) => rectangularBend({ heightRatio, angleDeg }));
  const coefficients: number[] = [];
  for (const way of ways) {
    if (!way.ok) return way;
    coefficients.push(way.value);
  }
  return { ok: true, value: Math.max(...coefficients) };
}
