/** Unpacks a font of the guide's own: its dictionary alone is a third of the tool. */
export default (...packed) => require("./brotli.cjs")(...packed);
