import { lazily } from "./lazily";

/** A row of a catalogue, as far as it tells how its symbol may also be written. */
interface Named {
  readonly also?: readonly string[];
  readonly spoken?: readonly string[];
}

/**
 * The symbol of each name in a catalogue: names are kept in small letters there; `symbols` adds the symbols themselves,
 * in small letters too.
 *
 * The map is made when it is first asked for: most imports never look a spoken name up.
 */
export function symbolsByName<Symbol extends string>(
  table: Readonly<Record<Symbol, object>>,
  symbols: boolean,
): () => ReadonlyMap<string, Symbol> {
  return lazily(
    () =>
      new Map(
        (Object.entries(table) as [Symbol, Named][]).flatMap(([symbol, { also = [], spoken = [] }]) =>
          [...(symbols ? [symbol.toLowerCase()] : []), ...also, ...spoken].map((name) => [name, symbol] as const),
        ),
      ),
  );
}
