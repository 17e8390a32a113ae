/** The package has no types of its own. */
declare module "subset-font" {
  export default function subsetFont(
    font: Buffer,
    signs: string,
    options: { readonly targetFormat: "woff" | "woff2"; readonly noHinting?: boolean },
  ): Promise<Buffer>;
}
