/** Kernel: smallest difference between values that occur: the converter's step; 0 where there is none to be seen. */
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
    // Rounding in the calibration makes equal readings differ in the last digits.
    if (apart <= 1e-9 * range) continue;
    distinct++;
    if (step === 0 || apart < step) step = apart;
  }
  // Values of a fine record are all different: their least distance is chance, no step.
  return distinct > 0.7 * sample.length ? 0 : step;
}
