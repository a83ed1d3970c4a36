import type { OptionRow, OptionRows } from "./option-row";

/** A picture of the answer beside it. */
export const chartOptions = {
  chart: {
    argument: "<file>",
    help: "also a picture of the answer: .svg, .html, or .png (by the package @resvg/resvg-js beside veladis)",
    example: "picture.svg",
  },
  replace: { help: "replace the file of --chart where one is there" },
} as const satisfies OptionRows;

/** A picture in the terminal. */
export const plot = {
  help: "also a plot in block characters, as wide as the window; 80 columns where the output is no terminal",
} as const satisfies OptionRow;
