import { useState } from 'react';
import { numberFindings, VERDICT_NAMES } from '../../drawing';
import { type Finding, VERDICTS, type Verdict } from '../../rules';
import type { Scene } from '../../scene';
import type { Formatter } from '../../units';
import { FetchedPart } from '../parts/FetchedPart';
import { Mark } from '../parts/Mark';
import { useApp } from '../store/store';
import { ChecksNote } from './ChecksNote';
import { FindingRow } from './FindingRow';

interface Props {
  scene: Scene;
  findings: readonly Finding[];
  format: Formatter;
  /** Id of the chosen finding. */
  chosen: string | null;
}

/** The ledger: what the checks say, worst first; then what they ask. Clear checks are folded into one line that can be opened. */
export function Ledger({ scene, findings, format, chosen }: Props) {
  const [isUnfolded, setUnfolded] = useState(false);
  const loadedChecks = useApp((s) => s.loadedChecks);
  const numbers = numberFindings(findings);
  const wrong = findings.filter((f) => f.verdict === 'stop' || f.verdict === 'watch');
  const clear = findings.filter((f) => f.verdict === 'clear');
  const row = (finding: Finding) => (
    <FindingRow
      key={finding.id}
      finding={finding}
      number={numbers.get(finding.id) ?? null}
      format={format}
      isChosen={finding.id === chosen}
    />
  );
  return (
    <section className="ledger" aria-label="Findings" aria-busy={loadedChecks === 'none' || loadedChecks === 'line'}>
      <header>
        <h2>Findings</h2>
        <Tallies findings={findings} />
      </header>
      <ChecksNote />
      {findings.length === 0 && loadedChecks === 'all' && (
        <p className="quiet nothing">Nothing to check yet. Put a machine on the paper, or begin with a line.</p>
      )}
      <ol>
        {wrong.map(row)}
        {findings.some((f) => f.verdict === 'ask') && (
          <FetchedPart fetch={fetchQuestions} close={nothing} props={{ scene, findings, format, chosen }} />
        )}
        {clear.length > 0 && (
          <li>
            <button type="button" className="fold" data-clear="true" aria-expanded={isUnfolded} onClick={() => setUnfolded(!isUnfolded)}>
              <Mark verdict="clear" />
              <span>
                {clear.length} {clear.length === 1 ? 'check holds' : 'checks hold'}
                {loadedChecks === 'all' ? '' : ' so far'}
              </span>
              <span className="end">{isUnfolded ? 'fold' : 'show'}</span>
            </button>
          </li>
        )}
        {isUnfolded && clear.map(row)}
      </ol>
    </section>
  );
}

export const fetchQuestions = async () => (await import('./Questions')).Questions;

const nothing = () => {};

/** How many of each verdict; those without any are left out. Clear ones are counted once all checks are here: a part of them is no answer. */
export function Tallies({ findings }: { findings: readonly Finding[] }) {
  const isWhole = useApp((s) => s.loadedChecks === 'all');
  const count = (verdict: Verdict) => findings.filter((f) => f.verdict === verdict).length;
  return (
    <>
      {VERDICTS.filter((verdict) => count(verdict) > 0 && (isWhole || verdict !== 'clear')).map((verdict) => (
        <span key={verdict} className={`tally mark-${verdict}`} title={VERDICT_NAMES[verdict]}>
          <Mark verdict={verdict} /> {count(verdict)}
          <span className="sr-only">{VERDICT_NAMES[verdict]}</span>
        </span>
      ))}
    </>
  );
}
