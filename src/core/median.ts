/** The middle one of some numbers, which it puts in order; 0 of none. */
export function medianOf(numbers: Float64Array): number {
  const [first = 0] = numbers;
  if (numbers.every((one) => one === first)) return first;
  const sorted = numbers.sort();
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : (sorted[half - 1] ?? 0) / 2 + upper / 2;
}
