import { createMessages, type NoParams } from '../../../../rules';

export interface RoomDoorMessages {
  'room/ask-door': NoParams;
}

const say = createMessages<RoomDoorMessages>();

/** What the input is called where no door is drawn that people walk through. */
export const ROOM_DOOR = say('room/ask-door');
