import { EXAMPLES } from '../plan';
import { PAPERS } from '../sheets';

/** What `rackway help` prints, and what stands below a command line that can't be understood. */
export const USAGE = `Rackway plans a dish room and says what is wrong with it.

rackway check FILE... [--json] [--units us|metric]
    Says what the checks find in each plan, worst first.
    Leaves with 0 when everything checked holds; 1 when something is stop, watch or ask
    (an open question is not a pass); 2 when a file can't be read.

rackway figures FILE... [--json] [--units us|metric]
    Says what can be computed from each plan, by kind: capacity, water, heat, air, power,
    drain, people. A figure without its input names the input. Leaves with 0; 2 when a file
    can't be read.

rackway draw FILE --out PLAN.svg|PLAN.png [--paper NAME] [--scale 1:50] [--units us|metric]
    Draws the dimensioned plan, true to scale. Papers: ${Object.keys(PAPERS).join(', ')}.

rackway new --example NAME [--out FILE]
    Writes an example plan. Examples: ${EXAMPLES.map(({ name }) => name).join(', ')}.

rackway manual [--out FILE.md] [--units us|metric]
    Prints the manual as Markdown: every check, figure, formula, limit and rule with its reason,
    range, source and worked examples.

rackway help
    Prints this.
`;
