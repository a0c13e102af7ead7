/** What is used here of the npm package dxf, which brings no types. */
declare module "dxf" {
  interface Entity {
    readonly type: string;
    readonly layer: string;
    readonly closed: boolean;
    readonly vertices: readonly { readonly x: number; readonly y: number }[];
  }
  interface Drawing {
    readonly header: {
      readonly insUnits: number;
      readonly extMin: { readonly x: number; readonly y: number };
      readonly extMax: { readonly x: number; readonly y: number };
    };
    readonly entities: readonly Entity[];
  }
  export function parseString(text: string): Drawing;
}
