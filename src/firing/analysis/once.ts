/** Returns the function with its results remembered for each set of arguments. A call that throws is not remembered. */
export function oncePer<A extends readonly (number | string)[], T>(
  compute: (...of: A) => T,
): (...of: A) => T {
  const results = new Map<string, { readonly value: T }>();
  return (...of) => {
    const key = of.join(' ');
    const result = results.get(key) ?? { value: compute(...of) };
    results.set(key, result);
    return result.value;
  };
}
