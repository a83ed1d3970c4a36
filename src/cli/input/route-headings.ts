import { shown, VeladisError } from "../../core/index";
import type { Line } from "./lines";
import { requireName } from "./require-name";

/** A line of a route with the machine that a heading above it names: `ID fan 1:`, and its points indented below. */
export interface HeadedLine extends Line {
  readonly heading: string;
}

/** Tells which lines of a route are headings, and under which the others stand. */
export class RouteHeadings {
  private heading: Line | undefined;
  private isUsed = false;

  /**
   * The line under its heading; undefined for a heading. A line that is not indented ends the heading above it.
   *
   * @throws {@link VeladisError} as {@link requireName} for a line below a heading that is more than a name
   */
  under(line: Line): HeadedLine | undefined {
    const isIndented = /^\s+\S/.test(line.text);
    if (isIndented && this.heading !== undefined) {
      this.isUsed = true;
      const heading = this.heading.text.trim().replace(/\s*:$/, "");
      requireName(heading);
      return { ...line, heading };
    }
    if (!isIndented && /\S\s*:\s*$/.test(line.text)) {
      this.heading = line;
      this.isUsed = false;
      return undefined;
    }
    this.heading = undefined;
    return { ...line, heading: "" };
  }

  /** A heading with nothing below it, once the line behind it is known; asked before each line and at the end. */
  unused(next: Line | undefined): Line | undefined {
    const isBelow = next !== undefined && /^\s+\S/.test(next.text);
    return this.heading !== undefined && !this.isUsed && !isBelow ? this.taken() : undefined;
  }

  private taken(): Line | undefined {
    const { heading } = this;
    this.heading = undefined;
    return heading;
  }
}

/** The refusal of a heading that has nothing below it. */
export function unusedHeading({ text }: Line): VeladisError {
  return new VeladisError("syntax", {
    expected: "a reading behind the place, or indented lines below a heading",
    received: shown(text.trim()),
  });
}
