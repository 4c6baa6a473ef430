/**
 * Kernel: smallest difference between the values that occur, which is the resolution of the converter; 0 where none is
 * detectable.
 */
export function converterStep(values: Float64Array): number {
  const stride = Math.max(1, Math.floor(values.length / 20_000));
  const sample = new Float64Array(Math.ceil(values.length / stride));
  for (let i = 0, k = 0; i < values.length; i += stride) sample[k++] = values[i];
  sample.sort();
  const range = sample[sample.length - 1] - sample[0];
  let step = 0;
  let distinct = 1;
  for (let i = 1; i < sample.length; i++) {
    const apart = sample[i] - sample[i - 1];
    // Rounding in the calibration gives equal readings different last digits.
    if (apart <= 1e-9 * range) continue;
    distinct++;
    if (step === 0 || apart < step) step = apart;
  }
  // In a record of fine resolution all values differ; their smallest difference is then coincidental.
  return distinct > 0.7 * sample.length ? 0 : step;
}
