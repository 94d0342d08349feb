import {
  areaPlace,
  type Check,
  createMessages,
  type FigureReading,
  holdReading,
  type Measurement,
  readFigure,
  TOLERANCE,
} from '../../../rules';
import type { Scene } from '../../../scene';
import { rule as surfaceMarginFigure } from '../figures/surface-margin';

export const check: Check = {
  id: 'walls-dry',
  order: 490,
  title: 'Wall and ceiling do not sweat',
  group: 'air',
  unit: 'K',
  relation: 'at-least',
  source: {
    kind: 'published',
    document: 'Resistances in a row; dew point by ASHRAE Handbook of Fundamentals 2017, ch. 1',
    section: 'the films of air on both sides are usual values from memory',
    confidence: 'memory',
  },
  why: 'A surface below the dew point of the room drips on clean ware and feeds mould. It is reckoned with the coldest air outside and the room as humid as its machines make it.',
  measure: (scene) => readFigure(surfaceMarginFigure, scene).map((reading) => measureSurface(scene, reading)),
};

/** `margin` above the dew point of the room, `short` of it: K. */
export interface WallsDryMessages {
  'walls-dry/what': { surface: Surface };
  'walls-dry/dry': { surface: Surface; margin: number };
  'walls-dry/sweats': { surface: Surface; short: number };
}

type Surface = 'wall' | 'ceiling';

const say = createMessages<WallsDryMessages>();

function measureSurface(scene: Scene, reading: FigureReading): Measurement {
  const surface = reading.part === 'ceiling' ? 'ceiling' : 'wall';
  return holdReading(reading, {
    subjects: scene.machines.map(({ machine }) => machine.id),
    place: areaPlace(scene.room.outline),
    what: say('walls-dry/what', { surface }),
    limit: 0,
    severity: 'watch',
    message: (value) =>
      value >= -TOLERANCE ? say('walls-dry/dry', { surface, margin: value }) : say('walls-dry/sweats', { surface, short: -value }),
    ...(reading.part === undefined ? {} : { part: reading.part }),
  });
}
