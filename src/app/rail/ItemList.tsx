import { type Item, listItems } from '../../editor';
import { actions } from '../store/actions';
import { useApp } from '../store/store';
import { usePanelWork } from '../store/work';

/** Everything on the plan as a list: what the canvas does with a pointer, this does with the keyboard. */
export function ItemList() {
  const { scene } = usePanelWork();
  const chosen = useApp((s) => s.editor.selection);
  return (
    <>
      <h2 className="sr-only">Everything on the plan</h2>
      {listItems(scene)
        .filter(({ items }) => items.length > 0)
        .map((group) => (
          <section key={group.group} className="group">
            <h3>{group.title}</h3>
            <ul className="items">
              {group.items.flatMap((item) => [
                <ItemPress key={item.id} item={item} chosen={chosen} />,
                ...item.parts.map((part) => <ItemPress key={part.id} item={part} chosen={chosen} isPart />),
              ])}
            </ul>
          </section>
        ))}
    </>
  );
}

function ItemPress({ item, chosen, isPart = false }: { item: Item; chosen: readonly string[]; isPart?: boolean }) {
  return (
    <li>
      <button
        type="button"
        style={isPart ? { paddingLeft: 44 } : undefined}
        aria-pressed={chosen.includes(item.id)}
        onClick={(e) => actions.select(e.shiftKey ? toggle(chosen, item.id) : [item.id])}
      >
        {!isPart && <span className="mark">{item.mark && <span className="lozenge">{item.mark}</span>}</span>}
        <span className="name">{item.name}</span>
        {item.what !== item.name.toLowerCase() && <span className="quiet">{item.what}</span>}
      </button>
    </li>
  );
}

const toggle = (ids: readonly string[], id: string) => (ids.includes(id) ? ids.filter((other) => other !== id) : [...ids, id]);
