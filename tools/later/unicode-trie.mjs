import UnicodeTrie from "./itself";

/** A table of signs, unpacked once somebody looks one up: those of scripts that no text of a guide is set in never are. */
export default class {
  #packed;
  #table;

  constructor(packed) {
    this.#packed = packed;
  }

  get(codePoint) {
    this.#table ??= new UnicodeTrie(this.#packed);
    return this.#table.get(codePoint);
  }
}
