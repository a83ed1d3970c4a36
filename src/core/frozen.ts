/** The table itself, frozen down to its last row, so that no importer can change what the next one reads. */
export function frozen<const Table extends object>(table: Table): Table {
  for (const value of Object.values(table)) {
    if (typeof value === "object" && value !== null) frozen(value);
  }
  return Object.freeze(table);
}
