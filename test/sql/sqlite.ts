import initSqlJs from "sql.js";

/** Runs a query and gives the rows, each a list; refuses as the engine does. */
export type Engine = (sql: string) => Promise<readonly (readonly unknown[])[]>;

// native mathematical functions, not those that the package once brought along
const { Database } = await initSqlJs({ useOldExtensionFunctions: false } as never);
const lite = new Database();

/** SQLite, as WebAssembly. */
export const sqlite: Engine = async (sql) => {
  const [answer] = lite.exec(sql);
  return answer?.values ?? [];
};
