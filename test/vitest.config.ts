import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL("..", import.meta.url));

export default defineConfig({
  root,
  resolve: {
    alias: [
      { find: /^veladis$/, replacement: `${root}src/index.ts` },
      { find: /^veladis\/([a-z]+)$/, replacement: `${root}src/entries/$1.ts` },
    ],
  },
  test: {
    include: ["test/**/*.test.ts"],
    testTimeout: 60_000,
    coverage: {
      provider: "v8",
      include: ["src/**/*.ts"],
      reporter: ["text-summary", "json-summary", "html"],
    },
  },
});
