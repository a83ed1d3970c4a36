import { VeladisError } from "../../core/index";
import type { Io } from "../input/io";

/**
 * How many columns a plot may take: those of the window, 20 at the least; 80 without one.
 *
 * @throws {@link VeladisError} `unknown-option` beside data, where a plot would stand between the lines
 */
export function plotWidth(
  { columns = 80 }: Io,
  { plot, json }: { readonly plot: boolean; readonly json: boolean },
): number {
  if (!plot || !json) return Math.max(20, columns);
  throw new VeladisError("unknown-option", {
    expected: "--plot for an answer to read: --json prints data alone",
    received: "--plot with --json",
    option: "plot",
  });
}
