import {
  chooseTool,
  createEditor,
  createPointerEvent,
  type EditorState,
  handle,
  type KeyInput,
  type PointerInput,
  type ToolChoice,
  toScreen,
} from '../../src/editor';
import type { Point } from '../../src/geometry';
import type { Plan } from '../../src/plan';
import { pick } from './pick';

/** Px per mm in these tests unless a case says otherwise: 5 mm to the px. */
export const SCALE = 0.2;

type Options = Parameters<typeof createPointerEvent>[3];

/** Drives the editor as a person would, in plan millimetres, and keeps the states that its tool went through. */
export class Driver {
  state: EditorState;
  readonly path: string[] = [];

  constructor(plan: Plan, scale = SCALE) {
    this.state = { ...createEditor(plan, { width: 1400, height: 900 }), view: { scale, dx: 0, dy: 0 } };
    this.note();
  }

  static with(plan: Plan, choice: ToolChoice): Driver {
    const driver = new Driver(plan);
    driver.state = chooseTool(driver.state, choice);
    driver.path.length = 0;
    return driver.note();
  }

  get plan(): Plan {
    return this.state.history.present;
  }

  get labels(): string[] {
    return this.state.history.past.map(({ label }) => label);
  }

  send(type: PointerInput['type'], at: Point, options?: Options): this {
    const event = createPointerEvent(this.state.view, type, toScreen(this.state.view, at), options);
    this.state = handle(this.state, { ...event, under: options?.under ?? pick(this.state, event.point, event.tolerance) });
    return this.note();
  }

  down(at: Point, options?: Options): this {
    return this.send('down', at, options);
  }

  move(at: Point, options?: Options): this {
    return this.send('move', at, options);
  }

  up(at: Point, options?: Options): this {
    return this.send('up', at, options);
  }

  press(at: Point, options?: Options): this {
    return this.move(at, options).down(at, options).up(at, options);
  }

  /** Down, halfway, there, up. */
  drag(from: Point, to: Point, options?: Options): this {
    const half = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
    return this.down(from, options).move(half, options).move(to, options).up(to, options);
  }

  key(key: string, modifiers: Partial<KeyInput> = {}): this {
    this.state = handle(this.state, { type: 'key', key, shift: false, alt: false, ctrl: false, ...modifiers });
    return this.note();
  }

  type(text: string): this {
    for (const character of text) this.key(character);
    return this;
  }

  cancel(): this {
    this.state = handle(this.state, { type: 'cancel' });
    return this.note();
  }

  leave(): this {
    this.state = handle(this.state, { type: 'leave' });
    return this.note();
  }

  private note(): this {
    const word = `${this.state.tool.tool}/${this.state.tool.name}`;
    if (this.path.at(-1) !== word) this.path.push(word);
    return this;
  }
}

export const at = (x: number, y: number): Point => ({ x, y });
