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

/** What was read of an object: a bit for each of its parts, and their values in the order of reading. */
class Reads<P extends string> {
  private bits = 0;
  private readonly parts: P[] = [];
  private readonly values: unknown[] = [];

  add(part: P, bit: number, value: unknown): void {
    if ((this.bits & bit) !== 0) return;
    this.bits |= bit;
    this.parts.push(part);
    this.values.push(value);
  }

  addAll(other: Reads<P>, bitOf: Readonly<Record<P, number>>): void {
    if ((other.bits & ~this.bits) === 0) return;
    for (let i = 0; i < other.parts.length; i++) this.add(other.parts[i] as P, bitOf[other.parts[i] as P], other.values[i]);
  }

  isSame(now: Readonly<Record<P, unknown>>): boolean {
    for (let i = 0; i < this.parts.length; i++) if (now[this.parts[i] as P] !== this.values[i]) return false;
    return true;
  }
}

const bitsOf = <P extends string>(parts: readonly P[]) => Object.fromEntries(parts.map((part, i) => [part, 1 << i])) as Record<P, number>;
const SCENE_BITS = bitsOf(SCENE_PARTS);
const PLAN_BITS = bitsOf(PLAN_PARTS);

/** A scene that writes down which of its parts are read. */
class SceneView {
  current: Scene;
  /** Its function has answered: what is read from now on (a wording, a repair) is no input of the answer. */
  isDone = false;
  readonly plan = new PlanView(this) as unknown as Plan;
  private readonly reads = new Reads<ScenePart>();
  private readonly planReads = new Reads<PlanPart>();
  private derived: Derived<unknown>[] | null = null;

  constructor(scene: Scene) {
    this.current = scene;
  }

  isSame(scene: Scene): boolean {
    return (
      this.reads.isSame(scene) &&
      this.planReads.isSame(scene.plan) &&
      (this.derived === null || this.derived.every((one) => one.isSame(one.value, one.derive(scene))))
    );
  }

  addReads(other: SceneView): void {
    if (this.isDone) return;
    this.reads.addAll(other.reads, SCENE_BITS);
    this.planReads.addAll(other.planReads, PLAN_BITS);
    for (const one of other.derived ?? []) this.addDerived(one);
  }

  addDerived(one: Derived<unknown>): void {
    if (this.isDone) return;
    this.derived ??= [];
    this.derived.push(one);
  }

  readAll(): void {
    for (const part of SCENE_PARTS) this.read(part, SCENE_BITS[part]);
    for (const part of PLAN_PARTS) this.readPlan(part, PLAN_BITS[part]);
  }

  read(part: ScenePart, bit: number): unknown {
    const value = this.current[part];
    if (!this.isDone) this.reads.add(part, bit, value);
    return value;
  }

  readPlan(part: PlanPart, bit: number): unknown {
    const value = this.current.plan[part];
    if (!this.isDone) this.planReads.add(part, bit, value);
    return value;
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
      return this.read(part, bit);
    },
  });
}
for (const part of PLAN_PARTS) {
  const bit = PLAN_BITS[part];
  Object.defineProperty(PlanView.prototype, part, {
    get(this: PlanView) {
      return this.scene.readPlan(part, bit);
    },
  });
}
