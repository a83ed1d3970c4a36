import { attempt } from "./attempt";
import { type CacheOptions, cached } from "./cached";

/** As {@link cached}, but a refusal is kept too, and thrown again: of a million rows, all may share one that is refused. */
export function cachedWithRefusals<Answer extends NonNullable<unknown>, Key extends string | number = string>(
  make: (key: Key) => Answer,
  options?: CacheOptions<Key>,
): (key: Key) => Answer {
  const attempts = cached((key: Key) => attempt(() => make(key)), options);
  return (key) => {
    const one = attempts(key);
    if (one.ok) return one.value;
    throw one.error;
  };
}
