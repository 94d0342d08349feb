import { createMessages, type Message, type NoParams } from '../../../../rules';

/** What the inputs are called that several rules of heat ask for. */
export interface HeatAskMessages {
  'heat/ask-booster': NoParams;
  'heat/ask-water-temperature': { water: 'hot' | 'cold' };
  'heat/ask-water-heating': NoParams;
}

const say = createMessages<HeatAskMessages>();

/** Power of the booster, on the data sheet. */
export const BOOSTER_INPUT = say('heat/ask-booster');

/** Temperature of the water as it comes. */
export const waterTemperatureInput = (water: 'hot' | 'cold'): Message => say('heat/ask-water-temperature', { water });

/** Gas or electricity. */
export const WATER_HEATING_INPUT = say('heat/ask-water-heating');
