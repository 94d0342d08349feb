import { describe, expect, it } from 'vitest';
import { type Plan, tryEdit } from '../../../src/plan';
import type { Finding } from '../../../src/rules';
import { examplePlan } from '../../support/examplePlans';
import { freshStore } from './freshStore';

const [corner, straight] = [examplePlan('school-corner'), examplePlan('cafe-straight')];
const machine = corner.machines[0]?.id ?? '';
const TITLE = ['title', 'project'];

function open(plan: Plan) {
  const page = freshStore();
  page.actions.open(plan, 'a.json');
  const present = () => page.readState().editor.history.present;
  return { ...page, present };
}

describe('a command', () => {
  it('is kept as one step and chooses what it names', () => {
    const { actions, readState, present } = open(corner);
    actions.run((plan) => {
      const result = tryEdit(plan, 'Rename', (draft) => void (draft.title.project = 'Other'));
      return result.ok ? { ok: true, transaction: result.transaction, select: [machine] } : { ok: false, problem: 'no' };
    });
    expect(present().title.project).toBe('Other');
    expect(readState().editor.history.past.map(({ label }) => label)).toEqual(['Rename']);
    expect(readState().editor.selection).toEqual([machine]);
  });

  it('that is refused changes nothing and says why', () => {
    const { actions, readState, present } = open(corner);
    actions.run(() => ({ ok: false, problem: 'There is no room.' }));
    expect(present()).toBe(corner);
    expect(readState().editor.message).toEqual({ tone: 'refused', text: 'There is no room.' });
  });
});

describe('a field', () => {
  it('takes what is typed in the units of the plan', () => {
    const { actions, present } = open(corner);
    expect(actions.setFieldText(['room', 'ceilingHeight'], '9 ft')).toBeNull();
    expect(present().room.ceilingHeight).toBe(2743.2);
  });

  it('keeps its value where the text is refused, and says why', () => {
    const { actions, present } = open(corner);
    expect(actions.setFieldText(['room', 'ceilingHeight'], 'high')).toEqual(expect.stringMatching(/\w/));
    expect(present()).toBe(corner);
  });

  it('takes a value as it is', () => {
    const { actions, present } = open(corner);
    expect(actions.setField(TITLE, 'Other')).toBeNull();
    expect(present().title.project).toBe('Other');
    const before = present();
    expect(actions.setField(['room', 'ceilingHeight'], 'tall')).toEqual(expect.stringMatching(/\w/));
    expect(present()).toBe(before);
  });
});

describe('what is chosen', () => {
  const finding = { id: 'joint-gap:1', subjects: [machine, corner.tables[0]?.id] } as unknown as Finding;

  it('a thing lets go of the finding and shows its card', () => {
    const { actions, readState, update } = open(corner);
    update({ finding: 'a', tab: 'list' });
    actions.select([machine]);
    expect(readState()).toMatchObject({ finding: null, tab: 'card', editor: { selection: [machine] } });
  });

  it('a finding chooses the first that it is about, and only it', () => {
    const { actions, readState } = open(corner);
    actions.chooseFinding(finding);
    expect(readState()).toMatchObject({ finding: 'joint-gap:1', editor: { selection: [machine] } });
    actions.chooseFinding(null);
    expect(readState()).toMatchObject({ finding: null, editor: { selection: [machine] } });
  });
});

describe('another plan', () => {
  it('opens at work, by its file’s name, with nothing chosen', () => {
    const { actions, readState, update, present } = open(corner);
    update({ page: 'start', finding: 'a', tab: 'list', typing: { path: TITLE, text: '', x: 0, y: 0 } });
    actions.open(straight, 'b.json');
    expect(present()).toBe(straight);
    expect(readState()).toMatchObject({ page: 'work', fileName: 'b.json', finding: null, tab: 'card', typing: null });
  });

  it('parks work that was changed, with what can be undone in it; resuming swaps the two', () => {
    const { actions, readState, present } = open(corner);
    actions.setField(TITLE, 'Changed');
    const changed = present();
    actions.open(straight, 'b.json');
    expect(readState().parkedPlan?.history.present).toBe(changed);
    actions.resume();
    expect(present()).toBe(changed);
    expect(readState().editor.history.past).toHaveLength(1);
    // The other plan had no change to lose.
    expect(readState()).toMatchObject({ parkedPlan: null, fileName: null });
  });

  it('that was changed is parked in turn', () => {
    const { actions, readState, present } = open(corner);
    actions.setField(TITLE, 'First');
    actions.open(straight, null);
    actions.setField(TITLE, 'Second');
    actions.resume();
    expect(present().title.project).toBe('First');
    expect(readState().parkedPlan?.history.present.title.project).toBe('Second');
  });

  it('parks nothing that was not changed, and keeps what was parked before', () => {
    const { actions, readState } = open(corner);
    actions.open(straight, null);
    expect(readState().parkedPlan).toBeNull();
    actions.setField(TITLE, 'Changed');
    actions.open(corner, null);
    actions.open(straight, null);
    expect(readState().parkedPlan?.history.present.title.project).toBe('Changed');
  });

  it('is not there to resume where none was parked', () => {
    const { actions, readState } = open(corner);
    const before = readState();
    actions.resume();
    expect(readState()).toBe(before);
  });
});

it('a tool and an event go to the editor', () => {
  const { actions, readState } = open(corner);
  actions.tool({ tool: 'measure' });
  expect(readState().editor.tool.tool).toBe('measure');
  actions.event({ type: 'key', key: 'Escape', shift: false, alt: false, ctrl: false });
  expect(readState().editor.tool.tool).toBe('select');
});

it('a message is shown with its tone', () => {
  const { actions, readState } = open(corner);
  actions.showMessage('note', 'Opened.');
  expect(readState().editor.message).toEqual({ tone: 'note', text: 'Opened.' });
});
