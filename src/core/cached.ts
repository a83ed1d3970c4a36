import { VeladisError } from "./error";

/** How much a cache keeps. */
interface CacheOptions<Key> {
  /** Room for answers, by their `size`; when it is full, all are forgotten. 256 if not given. */
  readonly room?: number;
  /** How much room the answer to a key takes; 1 if not given. */
  readonly size?: (key: Key) => number;
  /** Whether a refusal is kept too, and thrown again; not if not given. */
  readonly refusals?: boolean;
}

/**
 * A pure function of a text or a number that keeps its last answers.
 *
 * That cannot be seen from outside: the same key always gives the same answer. A flood of different keys costs time but
 * no memory, since the cache is emptied when it is full. The last answer is always kept, however large.
 */
export function cached<Answer extends NonNullable<unknown>, Key extends string | number = string>(
  make: (key: Key) => Answer,
  { room = 256, size, refusals }: CacheOptions<Key> = {},
): (key: Key) => Answer {
  const answers = new Map<Key, Answer>();
  const refused = new Map<Key, VeladisError>();
  let taken = 0;
  // A loop asks for the same key again and again: comparing with the last is several times faster than hashing.
  // nothing that anybody could ask for, not even nothing
  let lastKey: unknown = answers;
  let last: Answer | undefined;

  const keep = <Kept>(kept: Map<Key, Kept>, key: Key, one: Kept): void => {
    const more = size?.(key) ?? 1;
    if (taken + more > room) {
      answers.clear();
      refused.clear();
      taken = 0;
    }
    taken += more;
    kept.set(key, one);
  };

  const made = (key: Key): Answer => {
    const before = refused.get(key);
    if (before !== undefined) throw before;
    try {
      const answer = make(key);
      keep(answers, key, answer);
      return answer;
    } catch (error) {
      if (refusals && error instanceof VeladisError) keep(refused, key, error);
      throw error;
    }
  };

  return (key) => {
    if (key === lastKey) return last as Answer;
    const answer = answers.get(key) ?? made(key);
    lastKey = key;
    last = answer;
    return answer;
  };
}
