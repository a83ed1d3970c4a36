import type { OptionRows } from "./option-row";

/** A picture of the answer beside it. */
export const chartOptions = {
  chart: {
    argument: "<file>",
    help: "also a picture of the answer: .svg, .html, or .png (by the package @resvg/resvg-js beside veladis)",
    example: "picture.svg",
  },
  replace: { help: "replace the file of --chart where one is there" },
} as const satisfies OptionRows;
