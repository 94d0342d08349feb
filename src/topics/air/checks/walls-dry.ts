import { areaPlace, type Check, type FigureReading, holdReading, type Measurement, readFigure, sentence, TOLERANCE } from '../../../rules';
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

function measureSurface(scene: Scene, reading: FigureReading): Measurement {
  const name = reading.part === 'ceiling' ? 'the ceiling' : 'the outer wall';
  return holdReading(reading, {
    subjects: scene.machines.map(({ machine }) => machine.id),
    place: areaPlace(scene.room.outline),
    name: `whether ${name} sweats`,
    limit: 0,
    severity: 'watch',
    say: (value, f) =>
      sentence(
        value >= -TOLERANCE
          ? `${name} stays ${f.temperatureDifference(value)} above the dew point of the room.`
          : `${name} is ${f.temperatureDifference(-value)} below the dew point of the room when it is coldest outside, and sweats. Insulate it, or keep the room drier.`,
      ),
    ...(reading.part === undefined ? {} : { part: reading.part }),
  });
}
