/**
 * What a search finds, the best first: rows that have all of the words, else those that have any. A whole word counts
 * more than its beginning, a beginning more than a part within. It runs in the pages, so it stands by itself.
 *
 * @param index - the index that search.mjs writes, loaded
 * @param rows - its rows
 * @param text - what was typed
 */
export function ranked(index, rows, text) {
  const words = text
    .toLowerCase()
    .split(/[\s-]+/)
    .filter(Boolean);
  const one = (word) => {
    const found = index.query((query) => {
      query.term(word, { boost: 30 });
      if (word.length > 2 || words.length === 1) query.term(`${word}*`, { boost: 6 });
      if (word.length > 2) query.term(`*${word}*`, {});
    });
    const best = Math.max(...found.map(({ score }) => score));
    return new Map(found.map(({ ref, score }) => [ref, score / best]));
  };
  const scores = words.map(one).filter(({ size }) => size > 0);
  const all = [...new Set(scores.flatMap((found) => [...found.keys()]))];
  const common = all.filter((ref) => scores.every((found) => found.has(ref)));
  const typed = text.trim().toLowerCase();
  // what answers for these very words, then what is called so, then guides that begin with them
  const named = ({ name, kind, also = [] }) => {
    if (also.includes(typed)) return 100;
    return name.toLowerCase() === typed || (kind === 8388608 && name.toLowerCase().startsWith(typed)) ? 4 : 1;
  };
  const points = (ref) =>
    scores.reduce((product, found) => product * ((found.get(ref) ?? 0) + 1e-9), named(rows[Number(ref)]));
  return (common.length > 0 ? common : all)
    .map((ref) => ({ ref, score: points(ref) }))
    .sort((a, b) => b.score - a.score);
}
