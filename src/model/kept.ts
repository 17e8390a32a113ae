/**
 * Keeps what pure functions made, by what it was made from: gives what was kept, or makes it now.
 *
 * @param kind names the function
 * @param from all that it depends on, as text
 */
export type Keep = <T>(kind: string, from: string, make: () => T) => T;

/** Keeps nothing. */
export const makeAnew: Keep = (_kind, _from, make) => make();
