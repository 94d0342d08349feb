import { useRef, useState } from 'react';
import { findItem } from '../../editor';
import type { Finding } from '../../rules';
import type { Scene } from '../../scene';
import { askWords, findingWords } from '../../text';
import type { Formatter } from '../../units';
import { capital } from '../parts/capital';
import { Mark } from '../parts/Mark';
import { actions } from '../store/actions';
import { AskField } from './AskField';
import { deriveQuestions, type Question } from './deriveQuestions';
import { FindingDetails } from './FindingRow';
import { useKeepPlace } from './useKeepPlace';

interface Props {
  scene: Scene;
  findings: readonly Finding[];
  format: Formatter;
  chosen: string | null;
}

/** So many questions stand open by themselves; more are folded. */
const FEW = 3;

/** What the checks ask, folded when it is much: by group, each input once with its field right there. Answered, the next one has the keyboard. */
export function Questions({ scene, findings, format, chosen }: Props) {
  const groups = deriveQuestions(findings);
  const keys = groups.flatMap(({ questions }) => questions.map(({ key }) => key));
  const [wasOpened, setOpened] = useState<boolean | null>(null);
  const fold = useRef<HTMLButtonElement>(null);
  const list = useRef<HTMLUListElement>(null);
  const keep = useKeepPlace(list, fold, keys);
  if (keys.length === 0) return null;
  const isOpen = wasOpened ?? keys.length <= FEW;
  const count = keys.length === 1 ? '1 question' : `${keys.length} questions`;
  const waiting = findings.filter(({ verdict }) => verdict === 'ask').length;
  return (
    <li className="questions">
      <button ref={fold} type="button" className="fold" aria-expanded={isOpen} onClick={() => setOpened(!isOpen)}>
        <Mark verdict="ask" />
        <span>{count}</span>
        {waiting > keys.length && <span className="quiet">{waiting} checks wait</span>}
        <span className="end">{isOpen ? 'fold' : 'show'}</span>
      </button>
      <span role="status" className="sr-only">
        {count}
      </span>
      {isOpen && (
        <ul ref={list} {...keep}>
          {groups.map(({ group, questions }) => (
            <li key={group}>
              <h3>
                {capital(group)} <span>{questions.length}</span>
              </h3>
              <ul>
                {questions.map((question) => (
                  <QuestionEntry
                    key={question.key}
                    question={question}
                    of={
                      isAskedTwice(
                        question,
                        groups.flatMap((g) => g.questions),
                      )
                        ? nameOf(question, scene)
                        : null
                    }
                    format={format}
                    chosen={chosen}
                  />
                ))}
              </ul>
            </li>
          ))}
        </ul>
      )}
    </li>
  );
}

/** Several machines may be asked the same thing: then each says of which one. */
const isAskedTwice = ({ ask }: Question, all: readonly Question[]) =>
  ask !== null && all.filter((other) => isSameInput(other.ask, ask)).length > 1;

const isSameInput = (one: Question['ask'], other: Question['ask']) => JSON.stringify(one?.input) === JSON.stringify(other?.input);

const nameOf = ({ findings }: Question, scene: Scene) => findItem(scene, findings[0]?.subjects[0] ?? '')?.name ?? null;

interface EntryProps extends Omit<Props, 'scene' | 'findings'> {
  question: Question;
  /** Whose input it is, where that must be said. */
  of: string | null;
}

function QuestionEntry({ question, of, format, chosen }: EntryProps) {
  const { key, ask, findings } = question;
  return (
    <li className="question" data-key={key}>
      {ask && <AskField ask={ask} label={capital(of === null ? askWords(ask, format) : `${askWords(ask, format)}, ${of}`)} />}
      <ul>
        {findings.map((finding) => (
          <WaitingCheck
            key={finding.id}
            finding={finding}
            words={ask ? finding.title : findingWords(finding, format)}
            format={format}
            isChosen={finding.id === chosen}
          />
        ))}
      </ul>
    </li>
  );
}

/** A check that waits for an answer; chosen, it is lit on the plan and says why. */
function WaitingCheck(props: { finding: Finding; words: string; format: Formatter; isChosen: boolean }) {
  const { finding, words, format, isChosen } = props;
  return (
    <li className="finding" data-chosen={isChosen} data-check={finding.check} data-verdict={finding.verdict}>
      <button type="button" aria-expanded={isChosen} onClick={() => actions.chooseFinding(isChosen ? null : finding)}>
        <Mark verdict="ask" size={11} />
        {words}
      </button>
      {isChosen && <FindingDetails finding={finding} format={format} says={words !== findingWords(finding, format)} />}
    </li>
  );
}
