import type { DataSheet } from '../dataSheet';

const MAKE_SAFE =
  'Switch off at the disconnect, lock it out and tag it, shut the water, let the tank drain and cool. Electrical and plumbing work is for licensed trades.';
const LIFT = 'Move the machine with two persons, on its feet or on a dolly; never by the doors or the spray arms.';
const PROVE =
  'Open water and power again, look for leaks at the joints, run one empty cycle with the doors shut, and check that opening any door stops it.';

/**
 * Steps that turn a machine from straight-through to corner and back.
 * `linked`: on this family a link ties the side door to the front door; it comes off for the corner and its holes are plugged.
 */
export function conversion(linked: boolean): DataSheet['conversion'] {
  return {
    toCorner: [
      MAKE_SAFE,
      LIFT,
      'Lift out the front track piece and set it on the side that will have no table, so that the track is closed there.',
      ...(linked ? ['Take off the link between the closed side door and the front door, and plug its holes on both.'] : []),
      'Free the front door so that it opens with the side door that stays in use; latch the door of the closed side shut.',
      'Move the controls to the corner between the two tables, or order them there where the data sheet says so.',
      'Set the table at the front flush with the track and falling toward the machine; seal the corners of both joints with silicone.',
      PROVE,
    ],
    toStraight: [
      MAKE_SAFE,
      LIFT,
      'Lift out the track piece of the closed side and set it at the front, so that the track is closed there.',
      ...(linked ? ['Unplug the holes and fit the link between the side doors and the front door again.'] : []),
      'Free the door of the closed side so that both side doors open together.',
      'Move the controls to the front corner where the operator stands.',
      'Set both tables flush with the track and falling toward the machine; seal the corners of both joints with silicone.',
      PROVE,
    ],
  };
}
