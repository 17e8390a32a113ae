/** The layout engine has failed in this process, now or before: what it lays out from then on could be wrong. */
export class LayoutEngineError extends Error {
  override readonly name = "LayoutEngineError";
}

/**
 * Runs a layout engine that keeps its memory from one page to the next. Once that memory may be broken, it is never
 * asked again; content is held against its limits beforehand, so that this is a fault of the tool.
 */
export class LayoutEngine<Asked extends readonly unknown[], Made> {
  readonly #lay: (...asked: Asked) => Promise<Made>;
  #failure: string | undefined;

  constructor(lay: (...asked: Asked) => Promise<Made>) {
    this.#lay = lay;
  }

  /**
   * @throws LayoutEngineError where the engine's program ended in the middle, or did so before
   * @throws Error where it refused what it was asked: a fault of a template
   */
  async run(...asked: Asked): Promise<Made> {
    if (this.#failure !== undefined)
      throw new LayoutEngineError(`the layout engine failed: ${this.#failure}`);
    try {
      return await this.#lay(...asked);
    } catch (error) {
      // The error's own stack quotes the whole minified source of the engine.
      const reason = error instanceof Error ? error.message : String(error);
      if (!(error instanceof WebAssembly.RuntimeError || error instanceof RangeError))
        throw new Error(reason);
      this.#failure = reason;
      throw new LayoutEngineError(`the layout engine failed: ${reason}`);
    }
  }
}
