/** What is generated for the site, by file name: pages from the catalogues, and charts. */
import { bibliography } from "./pages/bibliography";
import { catalogues } from "./pages/catalogues";
import { chartFiles } from "./pages/chart-files";
import { commandReference } from "./pages/commands";
import { schemePages } from "./pages/schemes";

export const files: Readonly<Record<string, string>> = {
  ...(await commandReference()),
  ...catalogues(),
  ...schemePages(),
  ...bibliography(),
  ...chartFiles(),
};
