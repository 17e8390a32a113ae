/** A laid-out box in page coordinates [mm]. */
export interface Rectangle {
  readonly xMm: number;
  readonly yMm: number;
  readonly widthMm: number;
  readonly heightMm: number;
}
