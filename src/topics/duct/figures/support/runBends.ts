import { createMessages, createRefusal, type FormulaResult, type Message, type NoParams } from '../../../../rules';
import type { PlacedRun } from '../../../../scene';
import { mitredBend } from '../../formulas/mitredBend';
import { rectangularBend } from '../../formulas/rectangularBend';
import { rectangularMitre } from '../../formulas/rectangularMitre';
import { roundedBend } from '../../formulas/roundedBend';
import { segmentedBend, segmentedBendRecord } from '../../formulas/segmentedBend';

/** What the bends of a run lose together, and what had to be assumed. */
export interface RunBends {
  /** Sum of the loss coefficients. The friction along the bends is in the run's length. */
  coefficient: number;
  notes: Message[];
}

/** How all bends of a run are made and what flows through them. */
export interface BendFlow {
  radiusRatio: number;
  frictionFactor: number;
  reynolds: number;
}

/** Directions that differ by less are one, and a turn that is so near to square is square. */
const DUST_DEG = 1e-6;
const isSquare = (angleDeg: number) => Math.abs(angleDeg - 90) < DUST_DEG;

/**
 * The bends of a run by angle, radius and make. A rectangular bend is taken from its table where a value is held, the worse way
 * about, as the plan does not say which side lies across the turn; anywhere else it counts as round.
 */
export function sumBends({ run, bends }: PlacedRun, flow: BendFlow): FormulaResult<RunBends> {
  let coefficient = 0;
  const notes = new Set<Message>();
  for (const { angleDeg } of bends) {
    if (angleDeg < DUST_DEG) continue;
    const bend = measureBend(run.duct, isSquare(angleDeg) ? 90 : angleDeg, flow);
    if (!bend.loss.ok) return bend.loss;
    coefficient += bend.loss.value;
    for (const note of bend.notes) notes.add(note);
  }
  return { ok: true, value: { coefficient, notes: [...notes] } };
}

/** What had to be assumed of a bend. */
export interface RunBendsMessages {
  'run-bends/assumed-smooth': NoParams;
  'run-bends/counted-as-round': NoParams;
  'run-bends/more-in-slow-air': NoParams;
}

const say = createMessages<RunBendsMessages>();

// Each is one object, so that what is said of several bends stands once in the set of notes.
const ASSUMED_SMOOTH = say('run-bends/assumed-smooth');
const COUNTED_AS_ROUND = say('run-bends/counted-as-round');
const MORE_IN_SLOW_AIR = say('run-bends/more-in-slow-air');
/** From here on a mitred bend loses what its table says (SMACNA, Table A-7C: K at Re 14·10⁴ and more is 1.0). */
const SETTLED_REYNOLDS = 140_000;

type Duct = PlacedRun['run']['duct'];
interface BendLoss {
  loss: FormulaResult;
  notes: Message[];
}

function measureBend({ sides, bendMake }: Duct, angleDeg: number, flow: BendFlow): BendLoss {
  if (bendMake !== null && bendMake !== 'smooth') return measurePieces(sides, PIECES[bendMake], angleDeg, flow);
  if (flow.radiusRatio === 0) return measureMitre(sides, angleDeg, flow);
  const assumed = bendMake === null ? [ASSUMED_SMOOTH] : [];
  const held = sides === null ? null : worseWay(sides, (heightRatio) => rectangularBend({ heightRatio, angleDeg, ...flow }));
  if (held !== null) return { loss: { ok: true, value: held }, notes: assumed };
  const { radiusRatio, frictionFactor } = flow;
  const loss = roundedBend({ angleDeg, radiusRatio, frictionFactor, length: 'without-length' });
  return { loss, notes: sides === null ? assumed : [...assumed, COUNTED_AS_ROUND] };
}

const PIECES = { '3-piece': '3', '4-piece': '4', '5-piece': '5' } as const;

function measurePieces(sides: Duct['sides'], pieces: '3' | '4' | '5', angleDeg: number, { radiusRatio }: BendFlow): BendLoss {
  const isHeld = sides === null && Math.abs(radiusRatio - 1.5) < 1e-9;
  return {
    loss: isHeld
      ? segmentedBend({ pieces, angleDeg })
      : { ok: false, refusal: createRefusal(segmentedBendRecord, 'bend-of-pieces-not-held', {}) },
    notes: [],
  };
}

function measureMitre(sides: Duct['sides'], angleDeg: number, { reynolds }: BendFlow): BendLoss {
  const slow = reynolds < SETTLED_REYNOLDS ? [MORE_IN_SLOW_AIR] : [];
  const held = sides === null || !isSquare(angleDeg) ? null : worseWay(sides, (heightRatio) => rectangularMitre({ heightRatio }));
  if (held !== null) return { loss: { ok: true, value: held }, notes: slow };
  return { loss: mitredBend({ angleDeg }), notes: sides === null ? slow : [...slow, COUNTED_AS_ROUND] };
}

/** The larger of both ways about; null where one of them is not held. */
function worseWay({ width, height }: NonNullable<Duct['sides']>, measure: (heightRatio: number) => FormulaResult): number | null {
  const [flat, upright] = [measure(height / width), measure(width / height)];
  return flat.ok && upright.ok ? Math.max(flat.value, upright.value) : null;
}
