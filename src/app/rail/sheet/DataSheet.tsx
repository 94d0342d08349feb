import { useLayoutEffect, useMemo, useRef } from 'react';
import type { MachineSheet } from '../../../catalog';
import { fieldsFor, isOwnSheet, SHEET_PARTS } from '../../../editor';
import { findSheet } from '../../../plan';
import type { Scene } from '../../../scene';
import { useApp } from '../../store/store';
import { usePanelWork } from '../../store/work';
import { OwnSheets } from './OwnSheets';
import { SheetActions } from './SheetActions';
import { SheetForm } from './SheetForm';
import { SheetText } from './SheetText';

import '../../styles/sheet.css';

/** The data sheet of the chosen machines: a family's to be read, one's own to be changed; and the other ones of this plan. */
export function DataSheet() {
  const { scene } = usePanelWork();
  const { plan } = scene;
  const selection = useApp((s) => s.editor.selection);
  const machines = plan.machines.filter(({ id }) => selection.includes(id));
  const ids = machines.map(({ id }) => id);
  const [first, ...others] = [...new Set(machines.map((machine) => machine.sheet))];
  const sheet = first === undefined || others.length > 0 ? undefined : findSheet(plan, first);
  const isOwn = sheet !== undefined && isOwnSheet(plan, sheet.id);
  const root = useRef<HTMLDivElement>(null);
  const isMade = useRef(false);
  useLayoutEffect(() => {
    if (!isOwn || !isMade.current) return;
    isMade.current = false;
    root.current?.querySelector<HTMLElement>('input, textarea')?.focus();
  }, [isOwn]);
  return (
    <div className="data-sheet" ref={root}>
      <SheetActions
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
      <OwnSheets scene={scene} machines={ids} shown={sheet?.id} />
    </div>
  );
}

const FAMILY = 'A generic family, to be read. Make it your own to change its figures.';
const SEVERAL = 'These machines have several data sheets. Choose one machine to see its own.';

/** What is open stays open when a family's data sheet becomes one's own. */
function Parts({ sheet, isOwn, scene }: { sheet: MachineSheet; isOwn: boolean; scene: Scene }) {
  const fields = useMemo(() => fieldsOf(sheet, isOwn, scene), [sheet, isOwn, scene]);
  const { units } = scene.plan.settings;
  return SHEET_PARTS.map((part) => {
    const inside = isOwn ? (
      <SheetForm part={part} sheet={sheet} fields={fields} />
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
function fieldsOf(sheet: MachineSheet, isOwn: boolean, scene: Scene) {
  const plan = isOwn ? scene.plan : { ...scene.plan, sheets: [...scene.plan.sheets, sheet] };
  return fieldsFor(plan, isOwn ? scene : { ...scene, plan }, sheet.id);
}
