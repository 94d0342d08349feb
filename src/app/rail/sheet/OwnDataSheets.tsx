import { Trash2 } from 'lucide-react';
import { deleteSheet, giveSheet } from '../../../editor';
import type { Scene } from '../../../scene';
import { actions } from '../../store/actions';

/** The data sheets of the user's own in this plan: each can be given to the chosen machines, and removed while none uses it. */
export function OwnDataSheets({ scene, machines, shown }: { scene: Scene; machines: readonly string[]; shown: string | undefined }) {
  const { plan, marks } = scene;
  if (plan.sheets.length === 0) return null;
  const users = (sheet: string) => plan.machines.filter((machine) => machine.sheet === sheet).map(({ id }) => marks[id] ?? id);
  return (
    <section className="group">
      <h3>Your data sheets in this plan</h3>
      <ul className="own-sheets">
        {plan.sheets.map(({ id, name }) => (
          <li key={id}>
            <span>
              {name} <span className="quiet">· {users(id).length === 0 ? 'no machine' : `machine ${users(id).join(', ')}`}</span>
            </span>
            {id !== shown && (
              <button
                type="button"
                className="press"
                aria-label={`Use ${name}`}
                onClick={() => actions.run((now) => giveSheet(now, id, machines))}
              >
                Use
              </button>
            )}
            <button
              type="button"
              className="press"
              data-kind="bare"
              aria-label={`Delete ${name}`}
              title="Delete it"
              onClick={() => actions.run((now) => deleteSheet(now, id))}
            >
              <Trash2 size={15} />
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
