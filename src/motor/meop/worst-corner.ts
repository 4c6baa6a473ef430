import { lnPeakAt, type PeakResponse, workState } from './peak-response';

/** The limit of each tolerance that raises the pressure: −1, 1, or 0 where neither does. */
export function worstCorner(response: PeakResponse, temperature: number): Float64Array {
  const { inputs } = response;
  const work = workState(response);
  const shares = new Float64Array(inputs.length);
  // One limit at a time, until none raises the pressure further: the worst-case limit of an exponent depends on the other inputs.
  for (let pass = 0, moved = true; moved && pass < 10; pass++) {
    moved = false;
    for (let i = 0; i < inputs.length; i++) {
      const before = shares[i];
      let [best, most] = [0, Number.NEGATIVE_INFINITY];
      for (const share of [0, 1, -1]) {
        shares[i] = share;
        const lnP = lnPeakAt(response, shares, temperature, work);
        if (lnP > most) [best, most] = [share, lnP];
      }
      shares[i] = best;
      moved ||= best !== before;
    }
  }
  return shares;
}
