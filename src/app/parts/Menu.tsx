import { useEffect, useId, useRef, useState } from 'react';

export interface MenuEntry {
  label: string;
  hint?: string;
  icon?: React.ReactNode;
  disabled?: boolean;
  run: () => void;
}

export interface MenuGroup {
  title?: string;
  columns?: 1 | 2;
  entries: MenuEntry[];
}

/**
 * A button that opens a menu beside it. Arrow keys walk it, Escape closes it and gives the focus
 * back; it closes when something else is pressed.
 */
export function Menu(props: {
  label: React.ReactNode;
  title?: string;
  className?: string;
  kind?: string;
  groups: MenuGroup[];
  align?: 'start' | 'end';
  /** Groups stand in two columns. */
  isWide?: boolean;
}) {
  const id = useId();
  const button = useRef<HTMLButtonElement>(null);
  const panel = useRef<HTMLDivElement>(null);
  const [isOpen, setOpen] = useState(false);

  useEffect(() => {
    if (!isOpen || !panel.current || !button.current) return;
    placeBeside(panel.current, button.current, props.align ?? 'start');
    panel.current.querySelector<HTMLButtonElement>('button:not(:disabled)')?.focus();
  }, [isOpen, props.align]);

  const choose = (entry: MenuEntry) => {
    panel.current?.hidePopover();
    button.current?.focus();
    entry.run();
  };

  return (
    <>
      <button
        ref={button}
        type="button"
        className={props.className ?? 'press'}
        data-kind={props.kind}
        title={props.title}
        aria-label={props.title}
        aria-haspopup="menu"
        aria-expanded={isOpen}
        popoverTarget={id}
      >
        {props.label}
      </button>
      <div
        ref={panel}
        id={id}
        popover="auto"
        role="menu"
        className="menu"
        data-wide={props.isWide}
        style={{ position: 'fixed' }}
        onToggle={(event) => setOpen(event.newState === 'open')}
        onKeyDown={(event) => walk(event, panel.current)}
      >
        {isOpen &&
          props.groups.map((group, index) => (
            <div key={group.title ?? index} role="group" aria-label={group.title}>
              {group.title && (
                <p className="title" aria-hidden="true">
                  {group.title}
                </p>
              )}
              <div className="choices" data-columns={group.columns ?? 1}>
                {group.entries.map((entry) => (
                  <button key={entry.label} type="button" role="menuitem" disabled={entry.disabled} onClick={() => choose(entry)}>
                    {entry.icon}
                    {entry.label}
                    {entry.hint && <kbd>{entry.hint}</kbd>}
                  </button>
                ))}
              </div>
            </div>
          ))}
      </div>
    </>
  );
}

/** Keeps the panel on the screen, below its button where there is room. */
function placeBeside(panel: HTMLElement, button: HTMLElement, align: 'start' | 'end') {
  const b = button.getBoundingClientRect();
  const p = panel.getBoundingClientRect();
  const wantedLeft = align === 'start' ? b.left : b.right - p.width;
  const below = b.bottom + 4;
  const top =
    below + p.height <= window.innerHeight - 8 ? below : Math.max(8, Math.min(b.top - p.height - 4, window.innerHeight - p.height - 8));
  panel.style.left = `${Math.max(8, Math.min(wantedLeft, window.innerWidth - p.width - 8))}px`;
  panel.style.top = `${top}px`;
}

function walk(event: React.KeyboardEvent, panel: HTMLElement | null) {
  event.stopPropagation();
  const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
  if (!step || !panel) return;
  event.preventDefault();
  const all = [...panel.querySelectorAll<HTMLButtonElement>('button:not(:disabled)')];
  const at = all.indexOf(document.activeElement as HTMLButtonElement);
  all[(at + step + all.length) % all.length]?.focus();
}
