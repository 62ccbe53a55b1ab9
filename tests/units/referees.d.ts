// The few members of untyped referee libraries that the tests call.
declare module "unitmath" {
  interface Quantity {
    readonly value: number | null;
    to(unit: string): Quantity;
    mul(other: Quantity): Quantity;
  }
  export default function unitmath(text: string): Quantity;
}

declare module "js-quantities" {
  interface Quantity {
    readonly scalar: number;
    to(unit: string): Quantity;
    sub(other: Quantity): Quantity;
  }
  export default function Qty(text: string): Quantity;
}

declare module "@lhncbc/ucum-lhc" {
  interface Utilities {
    getSpecifiedUnit(code: string, use: "validate"): { readonly unit: object | null };
    convertUnitTo(
      from: string,
      value: number,
      to: string,
    ): { readonly status: string; readonly toVal: number | null };
  }
  export const UcumLhcUtils: { getInstance(): Utilities };
}
