import { createMessages, type NoParams } from '../../../../rules';

/** What the inputs are called that several rules of the duct ask for. */
export interface DuctAskMessages {
  'duct/ask-material': NoParams;
  'duct/ask-bend-radius': NoParams;
  'duct/ask-cap': NoParams;
  'duct/ask-exhaust-temperature': NoParams;
  'duct/ask-exhaust-humidity': NoParams;
  'duct/ask-insulation': NoParams;
  'duct/ask-fan-curve': NoParams;
}

export const sayDuctAsk = createMessages<DuctAskMessages>();
