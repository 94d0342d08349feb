import { useCallback, useState } from 'react';
import { FetchedPart, NO_PROPS } from '../parts/FetchedPart';

/** The data sheet of the machines that are chosen, folded; its form is fetched when it is opened. */
export function DataSheetFold() {
  const [isOpen, setOpen] = useState(false);
  const close = useCallback(() => setOpen(false), []);
  return (
    <details className="group" open={isOpen} onToggle={(e) => setOpen(e.currentTarget.open)}>
      <summary>Data sheet</summary>
      {isOpen && <FetchedPart fetch={fetchDataSheetCard} close={close} props={NO_PROPS} />}
    </details>
  );
}

const fetchDataSheetCard = async () => (await import('./sheet/DataSheetCard')).DataSheetCard;
