/** How much a cache keeps. */
export interface CacheOptions<Key> {
  /** Room for answers, by their `size`; when it is full, all are forgotten. 256 if not given. */
  readonly room?: number;
  /** How much room the answer to a key takes; 1 if not given. */
  readonly size?: (key: Key) => number;
}

/**
 * A pure function of a text or a number that keeps its last answers.
 *
 * That cannot be seen from outside: the same key always gives the same answer. A flood of different keys costs time but
 * no memory, since the cache is emptied when it is full. The last answer is always kept, however large.
 */
export function cached<Answer extends NonNullable<unknown>, Key extends string | number = string>(
  make: (key: Key) => Answer,
  { room = 256, size }: CacheOptions<Key> = {},
): (key: Key) => Answer {
  const answers = new Map<Key, Answer>();
  let taken = 0;
  // A loop asks for the same key again and again: comparing with the last is several times faster than hashing.
  // nothing that anybody could ask for, not even nothing
  let lastKey: unknown = answers;
  let last: Answer | undefined;

  const made = (key: Key): Answer => {
    const answer = make(key);
    const more = size?.(key) ?? 1;
    if (taken + more > room) {
      answers.clear();
      taken = 0;
    }
    taken += more;
    answers.set(key, answer);
    return answer;
  };

  return (key) => {
    if (key === lastKey) return last as Answer;
    const answer = answers.get(key) ?? made(key);
    lastKey = key;
    last = answer;
    return answer;
  };
}
