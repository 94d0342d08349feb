import { askFor, createMessages, type FigureReading, type NoParams } from '../../../../rules';

/** What the inputs are called that several rules of the air ask for. */
export interface AirAskMessages {
  'air/ask-room-temperature': NoParams;
  'air/ask-room-humidity': NoParams;
  'air/ask-make-up-air': NoParams;
  'air/ask-make-up-temperature': NoParams;
  'air/ask-make-up-humidity': NoParams;
  'air/ask-room-exhaust': NoParams;
  'air/ask-outdoor-temperature': NoParams;
  'air/ask-duct-air-temperature': NoParams;
  'air/ask-wall-conductance': NoParams;
  'air/ask-ceiling-conductance': NoParams;
  'air/ask-elevation': NoParams;
  'air/ask-hood-exhaust': NoParams;
  'air/ask-run-airflow': NoParams;
  'air/ask-ceiling-height': NoParams;
}

export const sayAirAsk = createMessages<AirAskMessages>();

/** Asks how high the room is, for its volume. */
export const askCeilingHeight = (): FigureReading => askFor([], sayAirAsk('air/ask-ceiling-height'), ['room', 'ceilingHeight']);
