declare module "pngjs" {
  interface Picture {
    readonly width: number;
    readonly height: number;
    /** Red, green, blue and opacity of each dot, row by row. */
    readonly data: Buffer;
  }
  export const PNG: {
    readonly sync: {
      read(bytes: Buffer): Picture;
      write(picture: Picture): Buffer;
    };
  };
}
