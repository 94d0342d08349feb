import { useEffect, useState } from 'react';
import { type Drawing, drawThings, type Layer } from '../../drawing';
import { describeProblem, EXAMPLES, type ReadResult } from '../../plan';
import type { Scene } from '../../scene';
import { DrawingCanvas } from '../parts/DrawingCanvas';
import { Tallies } from '../rail/Ledger';
import { actions } from '../store/actions';
import { loadExample } from '../store/examples';
import { deriveWork, type Work } from '../store/work';

/** What a thumbnail shows. */
const SHOWN: ReadonlySet<Layer> = new Set(['room', 'floor', 'equipment', 'above', 'run']);

/** The room and what stands in it, without words. */
const drawThumbnail = (scene: Scene): Drawing => drawThings(scene).filter((p) => p.kind !== 'text' && SHOWN.has(p.layer));

type Loaded = { work: Work } | { problem: string } | null;

/** The example rooms, each drawn small with its findings counted. */
export function ExampleRooms() {
  return (
    <div className="rooms">
      {EXAMPLES.map((example) => (
        <Room key={example.name} name={example.name} title={example.title} story={example.story} />
      ))}
    </div>
  );
}

function Room({ name, title, story }: { name: string; title: string; story: string }) {
  const [loaded, setLoaded] = useState<Loaded>(null);
  useEffect(() => {
    let isWanted = true;
    void loadExample(name).then((result) => {
      if (isWanted) setLoaded(workOut(result));
    });
    return () => {
      isWanted = false;
    };
  }, [name]);
  const work = loaded && 'work' in loaded ? loaded.work : null;
  return (
    <button type="button" className="room" disabled={!work} onClick={() => work && actions.open(work.scene.plan, null)}>
      <span style={{ position: 'relative', height: 168 }}>
        {work && <DrawingCanvas draw={() => drawThumbnail(work.scene)} label={`Plan of ${title}`} />}
      </span>
      <span className="words">
        <b>{title}</b>
        <span className="quiet">{loaded && 'problem' in loaded ? loaded.problem : story}</span>
        <span className="tallies">{work && <Tallies findings={work.findings} />}</span>
      </span>
    </button>
  );
}

/** A room that can't be worked out leaves the rest of the page as it is. */
function workOut(result: ReadResult): Loaded {
  if (!result.ok) return { problem: describeProblem(result.problem) };
  try {
    return { work: deriveWork(result.plan) };
  } catch (error) {
    return { problem: `This room can’t be worked out: ${error instanceof Error ? error.message : 'no reason given'}.` };
  }
}
