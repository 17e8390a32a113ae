/**
 * A module of a bundle as a script, whose value is a function that runs it and gives what it exports.
 *
 * @param name of its file
 */
export function asScript(name: string, code: string): string;
