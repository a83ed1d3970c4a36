/** fast-check with at most 150 runs a property and no search for a smaller counterexample: stands in for it under mutation. */
import { createRequire } from "node:module";

// by `require`, since an import of the name would lead back here
const { default: fc } = createRequire(import.meta.url)("fast-check") as typeof import("fast-check");

const most = 150;

const assert: typeof fc.assert = (property, options) =>
  fc.assert(
    property as never,
    {
      ...options,
      numRuns: Math.min(most, options?.numRuns ?? 100),
      endOnFailure: true,
    } as never,
  ) as never;

export default { ...fc, assert };
