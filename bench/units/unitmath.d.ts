// unitmath comes without types; this much of it is used.
declare module 'unitmath' {
  interface Unit {
    to(unit: string): Unit;
    mul(other: Unit): Unit;
    getValue(): number;
  }
  export default function unitmath(text: string): Unit;
  export default function unitmath(value: number, unit: string): Unit;
}
