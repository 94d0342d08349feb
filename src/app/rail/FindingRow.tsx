import { useEffect, useMemo, useRef } from 'react';
import { VERDICT_NAMES } from '../../drawing';
import type { Finding, Source } from '../../rules';
import { findingWords, repairWords } from '../../text';
import type { Formatter } from '../../units';
import { Gauge } from '../parts/Gauge';
import { Mark } from '../parts/Mark';
import { actions } from '../store/actions';
import { update } from '../store/store';
import { repairsOf, usePanelWork } from '../store/work';

/** One finding, with the number that its mark bears on the plan: its mark, a sentence, its gauge; chosen, also its source and its repairs. */
export function FindingRow(props: { finding: Finding; number: number | null; format: Formatter; isChosen: boolean }) {
  const { finding, number, format, isChosen } = props;
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (isChosen) row.current?.scrollIntoView({ block: 'nearest' });
  }, [isChosen]);
  return (
    <li ref={row} className="finding" data-chosen={isChosen} data-check={finding.check} data-verdict={finding.verdict}>
      <button type="button" aria-expanded={isChosen} onClick={() => actions.chooseFinding(isChosen ? null : finding)}>
        <span className="badge">
          <Mark verdict={finding.verdict} />
          {number}
        </span>
        <span>
          <span className="sr-only">{VERDICT_NAMES[finding.verdict]}: </span>
          {findingWords(finding, format)}
        </span>
        <Gauge finding={finding} format={format} />
      </button>
      {isChosen && <FindingDetails finding={finding} format={format} />}
    </li>
  );
}

/** What a chosen finding says further: its source and its repairs; `says`: its sentence first, where its row has another. */
export function FindingDetails({ finding, format, says = false }: { finding: Finding; format: Formatter; says?: boolean }) {
  const { scene } = usePanelWork();
  const repairs = useMemo(() => repairsOf(scene, finding), [scene, finding]);
  return (
    <div className="more">
      {says && <p>{findingWords(finding, format)}</p>}
      <p className="quiet">{describeSource(finding.source)}</p>
      {repairs.map((repair) => (
        <button key={repair.id} type="button" className="press" data-kind="strong" onClick={() => actions.applyRepair(finding, repair)}>
          {repairWords(repair, format)}
        </button>
      ))}
      <button type="button" className="how" onClick={() => update({ pane: 'manual', entry: `check/${finding.check}` })}>
        Why this is checked
      </button>
    </div>
  );
}

const CONFIDENCE = { read: '', secondary: ' (as restated)', memory: ' (from memory, unchecked)' } as const;

function describeSource(source: Source): string {
  if (source.kind === 'published') return `Source: ${source.document}, ${source.section}${CONFIDENCE[source.confidence]}.`;
  const kind = { 'data-sheet': 'The machine’s data sheet', 'common-practice': 'Common practice', geometry: 'Geometry of the plan' }[
    source.kind
  ];
  return `${kind}: ${source.text}`;
}
