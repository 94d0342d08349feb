import { useLayoutEffect, useMemo, useRef } from 'react';
import type { DataSheet } from '../../../catalog';
import { fieldsFor, isOwnDataSheet, SHEET_PARTS } from '../../../editor';
import { findDataSheet } from '../../../plan';
import type { Scene } from '../../../scene';
import { useApp } from '../../store/store';
import { usePanelWork } from '../../store/work';
import { DataSheetActions } from './DataSheetActions';
import { DataSheetForm } from './DataSheetForm';
import { OwnDataSheets } from './OwnDataSheets';
import { SheetText } from './SheetText';

import '../../styles/sheet.css';

/** The data sheet of the chosen machines: a family's to be read, one's own to be changed; and the other ones of this plan. */
export function DataSheetCard() {
  const { scene } = usePanelWork();
  const { plan } = scene;
  const selection = useApp((s) => s.editor.selection);
  const machines = plan.machines.filter(({ id }) => selection.includes(id));
  const ids = machines.map(({ id }) => id);
  const [first, ...others] = [...new Set(machines.map((machine) => machine.sheet))];
  const sheet = first === undefined || others.length > 0 ? undefined : findDataSheet(plan, first);
  const isOwn = sheet !== undefined && isOwnDataSheet(plan, sheet.id);
  const root = useRef<HTMLDivElement>(null);
  const isMade = useRef(false);
  useLayoutEffect(() => {
    if (!isOwn || !isMade.current) return;
    isMade.current = false;
    root.current?.querySelector<HTMLElement>('input, textarea')?.focus();
  }, [isOwn]);
  return (
    <div className="data-sheet" ref={root}>
      <DataSheetActions
        sheet={sheet}
        isOwn={isOwn}
        machines={ids}
        onMadeOwn={() => {
          isMade.current = true;
        }}
      />
      {isOwn ? (
        <p className="caution">Take figures from the machine’s own plate and papers; they govern, with local code and licensed trades.</p>
      ) : (
        <p className="quiet">{sheet ? FAMILY : SEVERAL}</p>
      )}
      {sheet && <Parts sheet={sheet} isOwn={isOwn} scene={scene} />}
      <OwnDataSheets scene={scene} machines={ids} shown={sheet?.id} />
    </div>
  );
}

const FAMILY = 'A generic family, to be read. Make it your own to change its figures.';
const SEVERAL = 'These machines have several data sheets. Choose one machine to see its own.';

/** What is open stays open when a family's data sheet becomes one's own. */
function Parts({ sheet, isOwn, scene }: { sheet: DataSheet; isOwn: boolean; scene: Scene }) {
  const fields = useMemo(() => fieldsOf(sheet, isOwn, scene), [sheet, isOwn, scene]);
  const { units } = scene.plan.settings;
  return SHEET_PARTS.map((part) => {
    const inside = isOwn ? (
      <DataSheetForm part={part} sheet={sheet} fields={fields} />
    ) : (
      <SheetText part={part} fields={fields} units={units} />
    );
    if (part.title === '') return <div key="name">{inside}</div>;
    return (
      <details key={part.title} className="group">
        <summary>{part.title}</summary>
        {inside}
      </details>
    );
  });
}

/** The fields of a data sheet; a family's are those that it would have if it stood in the plan. */
function fieldsOf(sheet: DataSheet, isOwn: boolean, scene: Scene) {
  const plan = isOwn ? scene.plan : { ...scene.plan, sheets: [...scene.plan.sheets, sheet] };
  return fieldsFor(plan, isOwn ? scene : { ...scene, plan }, sheet.id);
}
