/** Files of a guide that is large: of one as large as the shipped one memory is no concern, and time is. */
export const manyFiles = 400;
