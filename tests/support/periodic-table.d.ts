declare module "periodic-table" {
  const periodicTable: { readonly symbols: Readonly<Record<string, { readonly density: number }>> };
  export default periodicTable;
}
