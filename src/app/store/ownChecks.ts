import { type Check, inOrder } from '../../rules';

/**
 * The checks of the line and its room, which rest on what is drawn and follow a drag. They come first, and without the figures.
 * A module of its own, so that it can be fetched by itself.
 */
export const OWN_CHECKS: readonly Check[] = inOrder(
  Object.values(
    import.meta.glob<Check>(
      [
        '../../topics/line/checks/*.ts',
        '!../../topics/line/checks/rack-fits-table.ts',
        '../../topics/power/checks/power-agrees.ts',
        '../../topics/people/checks/controls-reachable.ts',
        '../../topics/room/checks/*.ts',
        '../../topics/hood/checks/{hood-height,hood-overhang,hood-where-needed}.ts',
        '../../topics/duct/checks/{fan-on-run,run-equivalent-length,run-reaches-outside}.ts',
      ],
      { eager: true, import: 'check' },
    ),
  ),
);
