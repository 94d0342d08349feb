import { useState } from 'react';
import type { Finding, Verdict } from '../../checks';
import { VERDICTS } from '../../checks';
import { VERDICT_NAMES } from '../../sheets';
import type { Formatter } from '../../units';
import { Mark } from '../parts/Mark';
import { FindingRow } from './FindingRow';

/** The ledger: what the checks say, worst first. Clear checks are folded into one line that can be opened. */
export function Ledger({ findings, format, chosen }: { findings: readonly Finding[]; format: Formatter; chosen: string | null }) {
  const [isUnfolded, setUnfolded] = useState(false);
  const open = findings.filter((f) => f.verdict !== 'clear');
  const clear = findings.filter((f) => f.verdict === 'clear');
  const row = (finding: Finding, index: number | null) => (
    <FindingRow
      key={finding.id}
      finding={finding}
      number={index === null ? null : index + 1}
      format={format}
      isChosen={finding.id === chosen}
    />
  );
  return (
    <section className="ledger" aria-label="Findings">
      <header>
        <h2>Findings</h2>
        <Tallies findings={findings} />
      </header>
      {findings.length === 0 && <p className="quiet nothing">Nothing to check yet. Put a machine on the paper, or begin with a line.</p>}
      <ol>
        {open.map(row)}
        {clear.length > 0 && (
          <li>
            <button type="button" className="fold" aria-expanded={isUnfolded} onClick={() => setUnfolded(!isUnfolded)}>
              <Mark verdict="clear" /> {clear.length} {clear.length === 1 ? 'check holds' : 'checks hold'}{' '}
              {isUnfolded ? '— fold' : '— show'}
            </button>
          </li>
        )}
        {isUnfolded && clear.map((finding) => row(finding, null))}
      </ol>
    </section>
  );
}

/** How many of each verdict; those without any are left out. */
export function Tallies({ findings }: { findings: readonly Finding[] }) {
  const count = (verdict: Verdict) => findings.filter((f) => f.verdict === verdict).length;
  return (
    <>
      {VERDICTS.filter((verdict) => count(verdict) > 0).map((verdict) => (
        <span key={verdict} className={`tally mark-${verdict}`} title={VERDICT_NAMES[verdict]}>
          <Mark verdict={verdict} /> {count(verdict)}
          <span className="sr-only">{VERDICT_NAMES[verdict]}</span>
        </span>
      ))}
    </>
  );
}
