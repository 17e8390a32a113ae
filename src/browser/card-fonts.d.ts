/** Fonts that the compile step puts into the bundle: TrueType. */
declare module "card-fonts" {
  export const regular: Uint8Array;
  export const bold: Uint8Array;
  export const italic: Uint8Array;
}
