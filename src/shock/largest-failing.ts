/** The largest argument, from 0 to `most`, for which a rising condition does not hold yet. */
export function largestFailing(holds: (x: number) => boolean, most: number): number {
  let low = 0;
  let high = most;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (holds(middle)) high = middle;
    else low = middle;
  }
  return low;
}
