import type { HoodExhaustEnoughMessages } from '../../topics/hood/checks/hood-exhaust-enough';
import type { HoodHeightMessages } from '../../topics/hood/checks/hood-height';
import type { HoodOverhangMessages } from '../../topics/hood/checks/hood-overhang';
import type { HoodWhereNeededMessages } from '../../topics/hood/checks/hood-where-needed';
import type { PlaceHoodMessages } from '../../topics/hood/checks/support/placeHood';
import type { RoomExhaustMessages } from '../../topics/hood/checks/support/roomExhaust';
import type { WaivedExhaustEnoughMessages } from '../../topics/hood/checks/waived-exhaust-enough';
import type { HoodExhaustMessages } from '../../topics/hood/figures/hood-exhaust';
import type { HoodNetExhaustMessages } from '../../topics/hood/figures/hood-net-exhaust';
import type { WaivedHoodExhaustMessages } from '../../topics/hood/figures/waived-hood-exhaust';
import { type Formatter, formatNumber } from '../../units';
import type { Wording } from '../wording';
import { nameWords } from './names';
import { list, sentence, sideWords } from './words';

/** The words of hoods: where one hangs, how large and how high, and what it draws. */
export const hood: Wording<
  HoodWhereNeededMessages &
    PlaceHoodMessages &
    HoodOverhangMessages &
    HoodHeightMessages &
    HoodExhaustEnoughMessages &
    WaivedExhaustEnoughMessages &
    RoomExhaustMessages &
    HoodExhaustMessages &
    HoodNetExhaustMessages &
    WaivedHoodExhaustMessages
> = {
  'hood-where-needed/hangs': ({ hood: name, machine }) => sentence(`${nameWords(name)} hangs over ${nameWords(machine)}.`),
  'hood-where-needed/missing': ({ machine, vapour, mayWaive }) =>
    sentence(
      `${nameWords(machine)} ${GIVES[vapour]} and has no hood over it. Hang one, larger than the machine${mayWaive ? ', or say in the plan that the room’s ventilation is designed for its heat and moisture' : ''}.`,
    ),
  'hood-where-needed/waived': ({ machine }) =>
    sentence(
      `${nameWords(machine)} has no hood over it: the plan says that the room’s ventilation takes its heat and moisture. The exhaust of the room is judged for that.`,
    ),
  'hood-where-needed/listing-not-known': ({ machine }) =>
    sentence(`${nameWords(machine)} wins back its heat. Is it electric and listed to UL 921 as condensing? Else it needs a hood.`),
  'hood-where-needed/ask-listing': () => LISTING,
  'hood-where-needed/not-needed': ({ machine, vapour }) =>
    sentence(`${nameWords(machine)} ${KEEPS[vapour]} and needs no hood; none hangs over it.`),
  'hood-where-needed/needless': ({ hood: name, machine, vapour }) =>
    sentence(
      `${nameWords(name)} hangs over ${nameWords(machine)}, which ${KEEPS[vapour]} and needs none. Leave it out unless the local official wants it.`,
    ),
  'hood-where-needed/repair-place-hood': ({ width, depth, lipHeight }, f) =>
    `Hang a hood of ${f.length(width)} × ${f.length(depth)}, lip ${f.length(lipHeight)} above the floor`,
  'hood-where-needed/repair-take-hood-away': ({ hood: name }) => `Take ${nameWords(name)} away`,

  'hood-overhang/enough': ({ hood: name, machine, side, overhang, least }, f) =>
    sentence(
      `${nameWords(name)} stands ${f.length(overhang)} beyond ${nameWords(machine)} at ${sideWords(side)}; ${f.length(least)} is needed.`,
    ),
  'hood-overhang/too-little': ({ hood: name, machine, side, overhang, by }, f) =>
    sentence(
      `${nameWords(name)} stands only ${f.length(overhang)} beyond ${nameWords(machine)} at ${sideWords(side)}. Bring its edge out ${f.length(by)}.`,
    ),
  'hood-overhang/ends-short': ({ hood: name, machine, side, short, by }, f) =>
    sentence(
      `${nameWords(name)} ends ${f.length(short)} short of ${nameWords(machine)} at ${sideWords(side)}. Bring its edge out ${f.length(by)}.`,
    ),
  'hood-overhang/repair-fit-hood': ({ width, depth }, f) => `Make the hood ${f.length(width)} × ${f.length(depth)}, all round the machine`,

  'hood-height/not-known': ({ hood: name, most }, f) =>
    sentence(`the height of ${nameWords(name)}’s lip is not known. It may hang at most ${f.length(most)} above the deck.`),
  'hood-height/ask-lip': ({ hood: name }) => `lip height of ${nameWords(name)}`,
  'hood-height/low-enough': ({ hood: name, machine, height, most }, f) =>
    sentence(`the lip of ${nameWords(name)} is ${f.length(height)} above the deck of ${nameWords(machine)}; ${f.length(most)} at most.`),
  'hood-height/too-high': ({ hood: name, machine, height, by }, f) =>
    sentence(
      `the lip of ${nameWords(name)} is ${f.length(height)} above the deck of ${nameWords(machine)}, ${f.length(by)} too high. Lower it.`,
    ),
  'hood-height/clear-of-heads': ({ hood: name, height, least }, f) =>
    sentence(`the lip of ${nameWords(name)} is ${f.length(height)} above the floor, clear of heads; ${f.length(least)} at least.`),
  'hood-height/too-low-for-heads': ({ hood: name, height, by }, f) =>
    sentence(
      `the lip of ${nameWords(name)} is ${f.length(height)} above the floor where the operator stands, ${f.length(by)} too low for heads. Raise it, or pad its edge.`,
    ),
  'hood-height/repair-hang-hood': ({ hood: name, from, to }, f) =>
    `${to < from ? 'Lower' : 'Raise'} ${nameWords(name)} to ${f.length(to)} above the floor`,

  'hood-exhaust-enough/what': ({ hood: name }) => `whether ${nameWords(name)} draws enough`,
  'hood-exhaust-enough/enough': ({ governing, ...drawn }, f) => sentence(`${drawnWords(drawn, f)}; ${asksWords(governing, f)}.`),
  'hood-exhaust-enough/enough-for-binding': ({ binding, governing, ...drawn }, f) =>
    sentence(
      `${drawnWords(drawn, f)}: enough for ${EXHAUST_RULES[binding.rule]} with its ${f.airflow(binding.airflow)}, ${f.airflow(governing.airflow - drawn.net)} less than ${f.airflow(governing.airflow)} by ${EXHAUST_RULES[governing.rule]}. Draw more, or choose in the plan the rule that counts there.`,
    ),
  'hood-exhaust-enough/too-little': ({ binding, governing, ...drawn }, f) =>
    sentence(
      `${drawnWords(drawn, f)}, and ${asksWords(binding, f)}: ${f.airflow(binding.airflow - drawn.net)} too little${governing === null ? '' : ` (${asksWords(governing, f)})`}. Give it a fan for that, and make-up air to match.`,
    ),
  'hood-exhaust-enough/cavity': ({ hood: name, share, most }) =>
    sentence(`${percent(share)} of what ${nameWords(name)} draws is blown into it; ${percent(most)} is the most.`),
  'hood-exhaust-enough/too-much-cavity': ({ hood: name, share, most }) =>
    sentence(
      `${percent(share)} of what ${nameWords(name)} draws is blown into it, more than ${percent(most)}. Bring that air into the room instead, where it carries the vapour to the hood.`,
    ),
  'hood-exhaust-enough/repair-draw-more': ({ airflow }, f) => `Draw ${f.airflow(airflow)} through the hood`,

  'waived-exhaust-enough/what': () => 'whether the room draws enough without a hood',
  'waived-exhaust-enough/ask-room-exhaust': () => 'general exhaust of the room',
  'waived-exhaust-enough/enough': (bare, f) =>
    `${bareWords(bare)}; the room draws ${f.airflow(bare.drawn)} and ${f.airflow(bare.asked)} are asked.`,
  'waived-exhaust-enough/too-little': (bare, f) =>
    `${bareWords(bare)}, and the room draws ${f.airflow(bare.drawn)} of the ${f.airflow(bare.asked)} that are asked: ${f.airflow(bare.asked - bare.drawn)} too little. Give the room an exhaust at its ceiling for that.`,
  'waived-exhaust-enough/would-be-too-little': (bare, f) =>
    `${bareWords(bare)}. For the room to take its place it would have to draw ${f.airflow(bare.asked)}, and it draws ${f.airflow(bare.drawn)}: ${f.airflow(bare.asked - bare.drawn)} too little.`,

  'hood-exhaust/rule': ({ rule }) => BESIDE[rule],
  'hood-exhaust/governs': ({ by }) =>
    by === 'strictest' ? 'Governs: of the codes and manuals it asks most.' : 'Governs: the plan goes by it.',
  'hood-exhaust/ask-lip': () => 'height of the hood’s lip',

  'hood-net-exhaust/ask-exhaust': () => 'exhaust of the hood',
  'hood-net-exhaust/ask-cavity-air': () => 'air blown into the hood’s cavity',
  'hood-net-exhaust/to-be-listed': () =>
    'It draws more than 1,000 cfm: up to that Washington’s energy code leaves a Type II hood over dish machines free; above, it is to be listed, or holds to the most that the code lets it draw.',

  'waived-hood-exhaust/ask-listing': () => LISTING,
  'waived-hood-exhaust/room-takes-it': () => 'The plan says that the ventilation of the room takes the heat and the moisture.',
  'waived-hood-exhaust/only-where-designed': () => 'Only where the ventilation of the room is designed to take the heat and the moisture.',
  'waived-hood-exhaust/quick-method': () =>
    'European method for a first size, by the floor alone. It stands beside the code’s figure and is not judged.',
};

const LISTING = 'listing of the machine as condensing (electric, to UL 921)';

const GIVES: Readonly<Record<HoodWhereNeededMessages['hood-where-needed/missing']['vapour'], string>> = {
  'not-listed': 'wins back its heat but is not listed as condensing',
  'to-room': 'gives its vapour to the room',
};

const KEEPS: Readonly<Record<HoodWhereNeededMessages['hood-where-needed/not-needed']['vapour'], string>> = {
  condensed: 'is listed as condensing its own vapour',
  'own-run': 'is made to vent through a run of its own',
};

type Enough = HoodExhaustEnoughMessages['hood-exhaust-enough/enough'];

/** `the hood draws 400 cfm`, and how much of it is left of its air. */
const drawnWords = ({ hood: name, net, cavityAir }: Omit<Enough, 'governing'>, f: Formatter) =>
  `${nameWords(name)} draws ${f.airflow(net)}${cavityAir === null ? '' : ` net of the ${f.airflow(cavityAir)} blown into it`}`;

/** `the model code (length of the hood) asks 400 cfm`. */
const asksWords = ({ rule, airflow }: Enough['governing'], f: Formatter) => `${EXHAUST_RULES[rule]} asks ${f.airflow(airflow)}`;

type ExhaustRule = Enough['governing']['rule'];

/** The rules of exhaust as a finding names them. */
const EXHAUST_RULES: Readonly<Record<ExhaustRule, string>> = {
  length: 'the model code (length of the hood)',
  face: 'the superseded military criteria of 2003 (speed through the hood’s face)',
  'area-least': 'the hospital manual (the hood’s area, low end)',
  'area-most': 'the hospital manual (the hood’s area, high end)',
  'older-area': 'the superseded model code of 2000 (the hood’s area)',
  'older-perimeter': 'the superseded model code of 2000 (the hood’s open edge and height)',
  capture: 'the capture formula',
};

/** What is said of them beside their figures. */
const BESIDE: Readonly<Record<ExhaustRule, string>> = {
  length: 'Model code; the longer edge is taken as its length.',
  face: 'Military criteria of 2003, superseded.',
  'area-least': 'Hospital manual, low end of its span.',
  'area-most': 'Hospital manual, high end of its span.',
  'older-area': 'Model code of 2000, superseded.',
  'older-perimeter': 'Model code of 2000, superseded.',
  capture: 'A formula of design and no code: it does not govern. Taken with 50 fpm at the edge of the source.',
};

const percent = (share: number) => `${formatNumber(100 * share)} %`;

/** `The machine stands without a hood`. */
const bareWords = ({ machines }: WaivedExhaustEnoughMessages['waived-exhaust-enough/enough']) =>
  `${sentence(list(machines.map(nameWords)))} ${machines.length === 1 ? 'stands' : 'stand'} without a hood`;
