/**
 * Loads the command before the first test. It loads its parts when they are asked for, so a table of a module would else
 * be made within whichever test comes first, and count as held by that one alone, though it is made once.
 */
import.meta.glob(["../../src/cli/{delimited,input,parquet,table}/*.ts", "!**/parquet-worker.ts"], { eager: true });
