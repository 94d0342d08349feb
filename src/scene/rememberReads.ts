import type { Plan } from '../plan';
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

/** The whole scene behind what a remembered function is given, for what must edit its plan; it counts as reading everything. */
export function wholeScene(asked: Scene): Scene {
  if (!(asked instanceof SceneView)) return asked;
  asked.readAll();
  return asked.current;
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

interface Read<P> {
  part: P;
  value: unknown;
}

/** In lists, since they are short and gone through for every check after every move. */
function note<P>(reads: Read<P>[], part: P, value: unknown): void {
  if (!reads.some((read) => read.part === part)) reads.push({ part, value });
}

/** A scene that writes down which of its parts are read. */
class SceneView {
  current: Scene;
  /** Its function has answered: what is read from now on (a wording, a repair) is no input of the answer. */
  isDone = false;
  readonly plan = new PlanView(this) as unknown as Plan;
  private readonly reads: Read<ScenePart>[] = [];
  private readonly planReads: Read<PlanPart>[] = [];

  constructor(scene: Scene) {
    this.current = scene;
  }

  isSame(scene: Scene): boolean {
    for (const { part, value } of this.reads) if (scene[part] !== value) return false;
    for (const { part, value } of this.planReads) if (scene.plan[part] !== value) return false;
    return true;
  }

  addReads(other: SceneView): void {
    if (this.isDone) return;
    for (const { part, value } of other.reads) note(this.reads, part, value);
    for (const { part, value } of other.planReads) note(this.planReads, part, value);
  }

  readAll(): void {
    for (const part of SCENE_PARTS) this.read(part);
    for (const part of PLAN_PARTS) this.readPlan(part);
  }

  read(part: ScenePart): unknown {
    const value = this.current[part];
    if (!this.isDone) note(this.reads, part, value);
    return value;
  }

  readPlan(part: PlanPart): unknown {
    const value = this.current.plan[part];
    if (!this.isDone) note(this.planReads, part, value);
    return value;
  }
}

/** The plan of such a scene. */
class PlanView {
  readonly #scene: SceneView;

  constructor(scene: SceneView) {
    this.#scene = scene;
  }

  readPlan(part: PlanPart): unknown {
    return this.#scene.readPlan(part);
  }
}

for (const part of SCENE_PARTS) {
  Object.defineProperty(SceneView.prototype, part, {
    get(this: SceneView) {
      return this.read(part);
    },
  });
}
for (const part of PLAN_PARTS) {
  Object.defineProperty(PlanView.prototype, part, {
    get(this: PlanView) {
      return this.readPlan(part);
    },
  });
}
