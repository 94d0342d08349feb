import type { DeckHeightMessages } from '../../../topics/people/figures/deck-height';
import type { HandSinkDistanceMessages } from '../../../topics/people/figures/hand-sink-distance';
import type { LiftingIndexMessages } from '../../../topics/people/figures/lifting-index';
import type { LiftingLimitMessages } from '../../../topics/people/figures/lifting-limit';
import type { ReachOverTableNotes } from '../../../topics/people/figures/reach-over-table';
import type { SharedPlacesMessages } from '../../../topics/people/figures/shared-places';
import type { StationWayWidthMessages } from '../../../topics/people/figures/station-way-width';
import type { RackLiftAsks } from '../../../topics/people/figures/support/rackLift';
import type { TurningSpaceMessages } from '../../../topics/people/figures/turning-space';
import type { WayLengthMessages } from '../../../topics/people/figures/way-length';
import type { WayWidthMessages } from '../../../topics/people/figures/way-width';
import type { WorkAreaMessages } from '../../../topics/people/figures/work-area';
import type { WorkingReachMessages } from '../../../topics/people/figures/working-reach';
import { refusalWords } from '../../quantities/refusalWords';
import type { Wording } from '../../wording';
import { REACHED } from './reached';

/** What is to be known beside the figures of people, and what their inputs are called. */
export const figures: Wording<
  WayWidthMessages &
    StationWayWidthMessages &
    WorkAreaMessages &
    TurningSpaceMessages &
    ReachOverTableNotes &
    WorkingReachMessages &
    DeckHeightMessages &
    HandSinkDistanceMessages &
    WayLengthMessages &
    SharedPlacesMessages &
    LiftingLimitMessages &
    RackLiftAsks &
    LiftingIndexMessages
> = {
  'way-width/enough': () => 'This wide or wider: ways that are wide enough are not told apart.',
  'way-width/narrowest': () => 'At its narrowest place.',
  'station-way-width/past-doors': () => 'Past the leaves of open doors. Ways that are wide enough are not told apart.',
  'station-way-width/beside-carts': () => 'The narrowest of them while every cart with free floor before it is rolled out by its depth.',
  'work-area/bounds-unknown': () => 'Whether what bounds it is fixed is not known: below 1000 ft² its ways are exempt only then.',
  'work-area/exempt': () => 'Below 1000 ft² within what is fixed: its ways need not be accessible, its approach and its door must.',
  'work-area/not-exempt': ({ refusal }, f) => `Its ways must be accessible: ${refusalWords(refusal, f)}.`,
  'work-area/programme': () => 'One programme of space gives the dish room of a military school 300 ft² (28 m²).',
  'turning-space/circle': () =>
    'A circle of 60 in on free floor. A T of arms 36 in wide in a square of 60 in serves as well; neither is asked in a work room.',
  'turning-space/t-shape': () =>
    'No circle of 60 in is free, but a T of arms 36 in wide in a square of 60 in is. It is looked for along the walls, the tables and the machine, not slanted between them. Neither is asked in a work room.',
  'reach-over-table/short-reach': () => 'For a person with a short reach (5th percentile), who does not lean.',
  'reach-over-table/back-edge': () => 'The back edge is out of reach.',
  'working-reach/to': ({ to }) => `To ${REACHED[to]}.`,
  'deck-height/by-elbow': ({ rule, veryShort, short, tall }) =>
    `${ELBOW_RULES[rule]}: ${STANDS[veryShort]} for a very short person, ${STANDS[short]} for a short person, ${STANDS[tall]} for a tall person.`,
  'deck-height/bench': ({ is }) => `NIOSH bench: ${STANDS[is]}.`,
  'deck-height/nine-in-ten': ({ light, heavy }) =>
    `Heights that suit nine in ten: ${STANDS[light]} for light work, ${STANDS[heavy]} for heavy work.`,
  'deck-height/ask-height': () => 'height of the deck at the joint',
  'hand-sink-distance/ask-sink': () => 'hand sink',
  'hand-sink-distance/near': () => 'Straight; on foot it is as long or longer. Where law sets a distance it is 25 ft.',
  'hand-sink-distance/far': () => 'Straight, and more than the 25 ft that some laws set.',
  'way-length/soiled': () => 'From the drop-off to the machine.',
  'way-length/rack': () => 'Through the machine, from table to table.',
  'way-length/clean': () => 'From the machine to the storage.',
  'shared-places/near': ({ places }) =>
    `${placesWords(places)} nearer to each other than a rack or a person is wide; where both come to the machine they merely meet.`,
  'lifting-limit/taken': () =>
    'By the manual’s metric constants; those in inches and pounds allow up to 4 % more. Taken: hands at the deck’s height, a good grip, the body turned by 30° as in the manual’s own example of a dish machine, racks as fast as they come back in the peak. Work to 1 h counts as short where as long a rest or lighter work follows, to 2 h as moderate with 0.3 of it, all else as long.',
  'lifting-limit/overshelf': () => 'Half of the rack rests on the shelf before it is let go; the feet stand before the table.',
  'lifting-limit/container': () =>
    'Best to hold is what is at most 16 in long in front and 12 in high. These racks are longer; the manual still rates cut-outs like theirs a good grip.',
  'lifting-limit/climate': () =>
    'The equation holds for 66 to 79 °F and 35 to 50 % humidity, a floor that does not slip, both hands and a load that does not shift.',
  'lifting-limit/climate-outside': () =>
    'The equation holds for 66 to 79 °F and 35 to 50 % humidity. This room is outside of that: less than this can be lifted.',
  'lifting-limit/ask-deck': ({ role }) => `height of the ${role} deck at the joint`,
  'lifting-limit/ask-shelf': () => 'height of the lowest shelf',
  'lifting-limit/ask-rest': () => 'minutes of rest or lighter work after the peak',
  'lifting-index/ask-mass': () => 'mass of a loaded rack',
};

const ELBOW_RULES = { grandjean: 'Grandjean', bodyspace: 'Bodyspace' } as const;

/** How a height stands to a band. */
const STANDS = { pass: 'within', low: 'low', high: 'high' } as const;

function placesWords(places: number): string {
  if (places === 0) return 'Nowhere';
  return places === 1 ? 'At 1 place' : `At ${places} places`;
}
