/** A figure typed with a decimal comma, as content has it: with a point. */
export const withPoint = (typed: string): string => typed.replace(/^(\d+),(?=\d)/, "$1.");
