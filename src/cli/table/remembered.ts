import { VeladisError } from "../../core/index";

/** A pure function of a text that remembers its last answers, refusals too: a million rows may share one bad unit. */
export function remembered<Answer>(make: (key: string) => Answer, limit = 4096): (key: string) => Answer {
  const known = new Map<string, { readonly answer: Answer } | VeladisError>();
  const made = (key: string): { readonly answer: Answer } | VeladisError => {
    try {
      return { answer: make(key) };
    } catch (error) {
      if (error instanceof VeladisError) return error;
      throw error;
    }
  };
  let lastKey: string | undefined;
  let last: Answer | undefined;
  return (key) => {
    if (key === lastKey) return last as Answer;
    let found = known.get(key);
    if (found === undefined) {
      found = made(key);
      if (known.size >= limit) known.clear();
      known.set(key, found);
    }
    if (found instanceof VeladisError) throw found;
    lastKey = key;
    last = found.answer;
    return found.answer;
  };
}
