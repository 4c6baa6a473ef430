/** Safety statement at the end of every report. */
export const usualCautions: readonly string[] = [
  'This analysis is not an approval to fire. It is only as accurate as its inputs and does not replace inspection of the actual parts.',
  'Test remotely and behind a barrier, with everyone at the distance required by the safety code. Treat a motor that has not ignited as one that still can.',
  'Follow local law and the codes of the national associations.',
  'Have the hardware and this review checked by a licensed or certified person before firing.',
];
