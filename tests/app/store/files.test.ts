import { readFileSync } from 'node:fs';
import { afterEach, describe, expect, it, vi } from 'vitest';
import { fileStem, savePlan, stemOf, takeFile } from '../../../src/app/store/files';
import { renderPlanText } from '../../../src/plan';
import { examplePlan } from '../../support/examplePlans';
import { freshStore } from './freshStore';

const plan = examplePlan('cafe-straight');

const load = () => ({ ...freshStore(), takeFile, stemOf, fileStem, savePlan });

const fileOf = (text: string, name = 'room.rackway.json') => new File([text], name);

afterEach(() => vi.unstubAllGlobals());

describe('a file that is opened', () => {
  it('takes the place of the plan, and it is said', async () => {
    const { takeFile, readState } = load();
    await takeFile(fileOf(renderPlanText(plan)));
    expect(readState()).toMatchObject({ fileName: 'room.rackway.json', page: 'work' });
    expect(readState().editor.history.present).toEqual(plan);
    expect(readState().editor.message).toEqual({ tone: 'note', text: 'Opened room.rackway.json.' });
  });

  it('of an older version is brought up, and it is said from which', async () => {
    const { takeFile, readState } = load();
    await takeFile(fileOf(readFileSync('tests/plan/fixtures/version-1.rackway.json', 'utf8')));
    expect(readState().editor.message).toEqual({ tone: 'note', text: 'Opened room.rackway.json, brought up from version 1.' });
  });

  it.each([
    { name: 'no plan', text: '{"a":1}' },
    { name: 'no JSON', text: 'plan' },
    { name: 'an unsound plan', text: renderPlanText({ ...plan, machines: [...plan.machines, ...plan.machines] }) },
  ])('with $name in it is refused by name; what was open stays open', async ({ text }) => {
    const { takeFile, readState } = load();
    const before = readState().editor.history;
    await takeFile(fileOf(text, 'other.json'));
    expect(readState().editor.history).toBe(before);
    expect(readState().fileName).toBeNull();
    expect(readState().editor.message).toMatchObject({
      tone: 'refused',
      text: expect.stringMatching(/^other\.json was not opened: .+\.$/),
    });
  });

  it('that the browser can’t read is refused as well', async () => {
    const { takeFile, readState } = load();
    const folder = { name: 'folder', arrayBuffer: () => Promise.reject(new Error('a folder')) } as unknown as File;
    await takeFile(folder);
    expect(readState().editor.message).toMatchObject({ tone: 'refused', text: expect.stringContaining('can’t read it') });
  });
});

describe('the name of a file', () => {
  it.each([
    { words: 'Alder Street School', stem: 'alder-street-school' },
    { words: 'Café Größe', stem: 'cafe-gro-e' },
    { words: '  –– 2nd floor ––  ', stem: '2nd-floor' },
    { words: '…', stem: '' },
  ])('$words', async ({ words, stem }) => {
    const { stemOf } = load();
    expect(stemOf(words)).toBe(stem);
  });

  it('comes from the title, and is never empty', async () => {
    const { fileStem } = load();
    const titled = (project: string, alternative: string) => fileStem({ ...plan, title: { ...plan.title, project, alternative } });
    expect(titled('Alder School', 'B')).toBe('alder-school-b');
    expect(titled('Alder School', '')).toBe('alder-school');
    expect(titled('', '')).toBe('dish-room');
  });
});

it('a plan that is saved is the plan that is open, and its file is named', async () => {
  const blobs: Blob[] = [];
  const link = { href: '', download: '', click: vi.fn<() => void>() };
  vi.stubGlobal('document', { createElement: () => link });
  vi.spyOn(URL, 'createObjectURL').mockImplementation((blob) => `blob:${blobs.push(blob as Blob)}`);
  vi.spyOn(URL, 'revokeObjectURL').mockImplementation(() => undefined);
  const { actions, savePlan, readState } = load();
  actions.open({ ...plan, title: { ...plan.title, project: 'Alder', alternative: '' } }, null);
  savePlan();
  expect(link).toMatchObject({ href: 'blob:1', download: 'alder.rackway.json' });
  expect(link.click).toHaveBeenCalledOnce();
  expect(await blobs[0]?.text()).toBe(renderPlanText(readState().editor.history.present));
  expect(readState().fileName).toBe('alder.rackway.json');
  vi.restoreAllMocks();
});
