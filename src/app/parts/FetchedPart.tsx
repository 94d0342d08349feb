import { type ComponentType, useEffect, useState } from 'react';
import { acts } from '../store/acts';

/** Fetches a part of the page that the canvas can do without. */
export type FetchPart = () => Promise<ComponentType>;

const fetched = new Map<FetchPart, ComponentType>();

/** A part of the page that is fetched once, when it is first shown. Where it can't be fetched it is said, and `close` is called. */
export function FetchedPart({ fetch, close }: { fetch: FetchPart; close: () => void }) {
  const [Part, setPart] = useState<ComponentType | null>(() => fetched.get(fetch) ?? null);
  useEffect(() => {
    let isWanted = true;
    fetchPart(fetch).then(
      (part) => isWanted && setPart(() => part),
      () => isWanted && refuse(close),
    );
    return () => {
      isWanted = false;
    };
  }, [fetch, close]);
  return Part && <Part />;
}

/** Fetches parts before they are asked for, so that they then show at once. What fails now is tried again, and said, when it is asked for. */
export function prefetch(parts: readonly FetchPart[]): void {
  void Promise.allSettled(parts.map(fetchPart));
}

async function fetchPart(fetch: FetchPart): Promise<ComponentType> {
  const part = fetched.get(fetch) ?? (await fetch());
  fetched.set(fetch, part);
  return part;
}

function refuse(close: () => void): void {
  close();
  acts.say('refused', 'This part of the page can’t be fetched. See that the page’s server can be reached, and try again.');
}
