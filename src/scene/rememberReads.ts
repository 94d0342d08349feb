import type { Plan } from '../plan';
import { memoizeByIdentity } from './memoizeByIdentity';
import type { Scene } from './types';

/**
 * Remembers the last answer of a pure function of a scene together with what it read of it: the parts of the scene and of
 * the plan, by identity. While all of these are the same the answer is, whatever else of the scene has changed. What it
 * read is seen by itself, so nothing can be forgotten in a list of inputs. A remembered function may ask another one:
 * what that one read counts for both.
 *
 * Functions that the answer holds (wording, repairs) see the newest scene that the answer was given for.
 */
export function rememberReads<R>(compute: (scene: Scene) => R): (scene: Scene) => R {
  let last: { view: SceneView; result: R } | null = null;
  return (asked) => {
    const scene = asked instanceof SceneView ? asked.current : asked;
    if (last?.view.isSame(scene)) last.view.current = scene;
    else {
      const view = new SceneView(scene);
      last = { view, result: compute(view as unknown as Scene) };
      view.isDone = true;
    }
    if (asked instanceof SceneView) asked.addReads(last.view);
    return last.result;
  };
}

/** The same for each of many items: one that is measured again leaves the answers for the others as they were. */
export function rememberEach<T extends object, R>(compute: (scene: Scene, item: T) => R): (scene: Scene, item: T) => R {
  const remembered = memoizeByIdentity((item: T) => rememberReads((scene) => compute(scene, item)));
  return (scene, item) => remembered(item)(scene);
}

/** The whole scene behind what a remembered function is given, for what must edit its plan; it counts as reading everything. */
export function wholeScene(asked: Scene): Scene {
  if (!(asked instanceof SceneView)) return asked;
  asked.readAll();
  return asked.current;
}

/**
 * Reads something that is made of parts of the scene. Of what it is made does not count as read, only what it is: while it stays
 * the same, so does the answer. `derive` looks at nothing but its scene and at what was read before.
 */
export function readDerived<R>(asked: Scene, derive: (scene: Scene) => R, isSame: (one: R, other: R) => boolean): R {
  if (!(asked instanceof SceneView)) return derive(asked);
  const value = derive(asked.current);
  asked.addDerived({ derive, value, isSame } as Derived<unknown>);
  return value;
}

interface Derived<R> {
  derive: (scene: Scene) => R;
  value: R;
  isSame: (one: R, other: R) => boolean;
}

type ScenePart = Exclude<keyof Scene, 'plan'>;
type PlanPart = keyof Plan;

/** Every part: the compiler sees that none is left out. */
const IS_SCENE_PART: Record<ScenePart, true> = {
  room: true,
  machines: true,
  appliances: true,
  layouts: true,
  tables: true,
  worktops: true,
  things: true,
  furnishings: true,
  hoods: true,
  hooded: true,
  runs: true,
  joints: true,
  lines: true,
  solids: true,
  marks: true,
};
const IS_PLAN_PART: Record<PlanPart, true> = {
  format: true,
  version: true,
  title: true,
  room: true,
  machines: true,
  tables: true,
  things: true,
  hoods: true,
  runs: true,
  demand: true,
  supply: true,
  order: true,
  air: true,
  finish: true,
  pipes: true,
  tariff: true,
  codes: true,
  settings: true,
  sheets: true,
};
const SCENE_PARTS = Object.keys(IS_SCENE_PART) as ScenePart[];
const PLAN_PARTS = Object.keys(IS_PLAN_PART) as PlanPart[];

type Bits<P extends string> = Readonly<Record<P, number>>;
/** Bits of a word, less its sign. */
const MOST_PARTS = 31;

function bitsOf<P extends string>(parts: readonly P[]): Bits<P> {
  if (parts.length > MOST_PARTS) throw new RangeError(`at most ${MOST_PARTS} parts`);
  return Object.fromEntries(parts.map((part, i) => [part, 1 << i])) as Bits<P>;
}

const SCENE_BITS = bitsOf(SCENE_PARTS);
const PLAN_BITS = bitsOf(PLAN_PARTS);

/** Whether all parts that are named by bits are the same objects. */
function isSameIn<P extends string>(parts: readonly P[], bits: number, one: Readonly<Record<P, unknown>>, other: typeof one): boolean {
  for (let left = bits; left !== 0; left &= left - 1) {
    const part = parts[31 - Math.clz32(left & -left)] as P;
    if (one[part] !== other[part]) return false;
  }
  return true;
}

/**
 * A scene that notes which of its parts are read: a bit for each. What they were is not noted, for the scene itself is held; one in
 * which all of them are the same takes its place.
 */
class SceneView {
  current: Scene;
  /** Its function has answered: what is read from now on (a wording, a repair) is no input of the answer. */
  isDone = false;
  readonly plan = new PlanView(this) as unknown as Plan;
  private bits = 0;
  private planBits = 0;
  private derived: Derived<unknown>[] | null = null;

  constructor(scene: Scene) {
    this.current = scene;
  }

  isSame(scene: Scene): boolean {
    const { current } = this;
    return (
      scene === current ||
      (isSameIn(SCENE_PARTS, this.bits, scene, current) &&
        (scene.plan === current.plan || isSameIn(PLAN_PARTS, this.planBits, scene.plan, current.plan)) &&
        (this.derived === null || this.derived.every((one) => one.isSame(one.value, one.derive(scene)))))
    );
  }

  addReads(other: SceneView): void {
    if (this.isDone) return;
    this.bits |= other.bits;
    this.planBits |= other.planBits;
    if (other.derived !== null) for (const one of other.derived) this.addDerived(one);
  }

  addDerived(one: Derived<unknown>): void {
    if (this.isDone) return;
    this.derived ??= [];
    this.derived.push(one);
  }

  readAll(): void {
    this.addBits((1 << SCENE_PARTS.length) - 1, (1 << PLAN_PARTS.length) - 1);
  }

  addBits(bits: number, planBits: number): void {
    if (this.isDone) return;
    this.bits |= bits;
    this.planBits |= planBits;
  }
}

/** The plan of such a scene. */
class PlanView {
  readonly scene: SceneView;

  constructor(scene: SceneView) {
    this.scene = scene;
  }
}

for (const part of SCENE_PARTS) {
  const bit = SCENE_BITS[part];
  Object.defineProperty(SceneView.prototype, part, {
    get(this: SceneView) {
      this.addBits(bit, 0);
      return this.current[part];
    },
  });
}
for (const part of PLAN_PARTS) {
  const bit = PLAN_BITS[part];
  Object.defineProperty(PlanView.prototype, part, {
    get(this: PlanView) {
      this.scene.addBits(0, bit);
      return this.scene.current.plan[part];
    },
  });
}
