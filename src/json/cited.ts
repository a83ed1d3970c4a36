/** Values that are written once and cited by their place. */
export interface Cited {
  readonly list: readonly unknown[];
  /** The place of a value in the list, where it is put if it is not there. */
  place(value: unknown): number;
}

/** A list without values yet. */
export function citedList(): Cited {
  const list: unknown[] = [];
  const places = new Map<string, number>();
  return {
    list,
    place(value) {
      const text = JSON.stringify(value);
      const known = places.get(text);
      if (known !== undefined) return known;
      places.set(text, list.length);
      return list.push(value) - 1;
    },
  };
}
