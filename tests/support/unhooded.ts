/** What else is wrong where a hood is gone: the room draws nothing, and the make-up air is blown out into the next rooms. */
export const UNHOODED = ['stop waived-exhaust-enough:machine', 'stop make-up-balances:negative:machine'];
