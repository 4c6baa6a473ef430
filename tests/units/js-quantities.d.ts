// js-quantities comes without types; this much of it is used.
declare module 'js-quantities' {
  export default class Qty {
    constructor(value: number | string, unit?: string);
    to(unit: string): Qty;
    toPrec(precision: string): Qty;
    mul(other: Qty | number): Qty;
    readonly scalar: number;
  }
}
