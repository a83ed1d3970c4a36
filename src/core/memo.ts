/**
 * A pure reader of texts that remembers its last answers.
 *
 * The memory cannot be seen from outside: the same text always gives the same answer. It is emptied when full,
 * so that a flood of different texts costs time but no memory. Errors are not remembered.
 */
export function memo<Answer>(read: (text: string) => Answer): (text: string) => Answer {
  const known = new Map<string, Answer>();
  // A loop asks for the same text again and again: comparing with the last is several times faster than hashing.
  // nothing that anybody could ask for, not even nothing
  let lastText: unknown = known;
  let last: Answer | undefined;
  return (text) => {
    if (text === lastText) return last as Answer;
    let answer = known.get(text);
    if (answer === undefined) {
      answer = read(text);
      if (known.size > 255) known.clear();
      known.set(text, answer);
    }
    lastText = text;
    last = answer;
    return answer;
  };
}
