import { availableParallelism } from "node:os";
import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

/** The public names of the package stand for their sources. */
const alias = [
  { find: /^veladis$/, replacement: `${root}src/index.ts` },
  { find: /^veladis\/([a-z]+)$/, replacement: `${root}src/entries/$1.ts` },
  // a thread runs no TypeScript
  { find: /^\.\/worker-url$/, replacement: `${root}test/cli/built-worker.ts` },
];

const common = { testTimeout: 60_000, hookTimeout: 120_000 };

export default defineConfig({
  root,
  test: {
    projects: [
      {
        root,
        resolve: { alias },
        test: {
          ...common,
          name: "node",
          // its modules import folders, which Node does not
          server: { deps: { inline: ["dt-sql-parser"] } },
          // Vitest's own count leaves one of two cores idle
          maxWorkers: Math.max(2, availableParallelism() - 1),
          include: ["test/**/*.test.ts"],
          exclude: ["test/browser/**", "test/consumers/**"],
        },
      },
      { root, resolve: { alias }, test: { ...common, name: "browser", include: ["test/browser/**/*.test.ts"] } },
      { root, resolve: { alias }, test: { ...common, name: "consumers", include: ["test/consumers/**/*.test.ts"] } },
    ],
    coverage: {
      provider: "v8",
      include: ["src/**/*.ts"],
      reporter: ["text-summary", "json-summary", "html"],
    },
  },
});
