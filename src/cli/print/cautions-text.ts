import { cautions } from "../../core/index";
import { dashed } from "./wrapped";

/** The cautions, as a command prints them below its answer. */
export function cautionsText(): string {
  return `\ncautions\n${dashed(cautions)}`;
}
