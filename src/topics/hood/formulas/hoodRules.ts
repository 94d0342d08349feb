import type { Entries, RuleRecord } from '../../../rules';

/** The plan draws no ducts but a machine's own run, so nothing of it can be held against this: checks of air say it in words. */
const ownExhaustRule: RuleRecord = {
  id: 'own-exhaust',
  title: 'Exhaust of its own',
  rule: 'What is drawn out at dish machines has a duct and a fan of its own, apart from every other exhaust of the building.',
  source: [
    { text: 'NYC Mechanical Code 501.2: Type II exhaust where food is processed', documents: ['nyc-mechanical-code'], confidence: 'read' },
    {
      text: 'UFC 4-740-01NF and 4-750-01NF (16 Apr 2004), 6-2.3.2: a fan and duct for dishwashing alone',
      documents: ['ufc-4-750-01nf', 'ufc-4-740-01nf'],
      confidence: 'read',
    },
    { text: 'UFC 3-410-01FA (15 May 2003), 4-10.3, superseded: a separate system', documents: ['ufc-3-410-01fa'], confidence: 'read' },
  ],
};

const hoodSeamsRule: RuleRecord = {
  id: 'hood-seams',
  title: 'Sheet and seams of a hood',
  rule: 'A Type II hood is of steel of at least 0.0296 in (22 gauge) or stainless steel of at least 0.0220 in (24 gauge); its inner seams and joints are sealed, smooth and watertight: what condenses in it drips on nothing.',
  source: [
    { text: 'IMC 507.3.1 and 507.3.3, as in a code summary', documents: ['imc'], confidence: 'secondary' },
    { text: 'FDA Food Code 4-204.11 as Minn. R. 4626.0565', documents: ['fda-food-code', 'minnesota-4626'], confidence: 'read' },
  ],
};

/** What the manual shows of this file. */
export const entries: Entries = [{ order: 10, rules: [ownExhaustRule, hoodSeamsRule] }];
