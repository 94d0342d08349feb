import { expect, test } from 'vitest';
import { deriveQuestions } from '../../src/app/rail/deriveQuestions';
import type { CheckGroup, Finding } from '../../src/rules';

type Ask = Finding['ask'];

const finding = (id: string, group: CheckGroup, ask: Ask, verdict: Finding['verdict'] = 'ask') =>
  ({ id, group, ask, verdict }) as unknown as Finding;

const at = (...path: string[]): Ask => ({ input: { key: path.join('/'), params: {} }, path });

const read = (findings: Finding[]) =>
  deriveQuestions(findings).map(({ group, questions }) => [
    group,
    ...questions.map((q) => `${q.key}: ${q.findings.map(({ id }) => id).join(' ')}`),
  ]);

const CASES: { name: string; findings: Finding[]; expect: string[][] }[] = [
  { name: 'nothing asked', findings: [finding('a', 'line', null, 'clear'), finding('b', 'line', null, 'stop')], expect: [] },
  {
    name: 'groups stand in the order of the manual, not of the findings',
    findings: [finding('a', 'power', at('x')), finding('b', 'line', at('y'))],
    expect: [
      ['line', 'y: b'],
      ['power', 'x: a'],
    ],
  },
  {
    name: 'what two checks wait for is asked once, in the first of their groups',
    findings: [
      finding('a', 'power', at('supply', 'voltage')),
      finding('b', 'line', at('supply', 'voltage')),
      finding('c', 'power', at('x')),
    ],
    expect: [
      ['line', 'supply.voltage: b a'],
      ['power', 'x: c'],
    ],
  },
  {
    name: 'a group whose every input is asked elsewhere has no heading of its own',
    findings: [finding('a', 'line', at('x')), finding('b', 'water', at('x'))],
    expect: [['line', 'x: a b']],
  },
  {
    name: 'a check that no single input would help is an entry of its own',
    findings: [finding('a', 'air', null), finding('b', 'air', null)],
    expect: [['air', 'a: a', 'b: b']],
  },
];

test.each(CASES)('$name', ({ findings, expect: wanted }) => expect(read(findings)).toEqual(wanted));
