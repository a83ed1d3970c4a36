import { describe, expect, it } from "vitest";
import { asFoundAsLeft, checkAgainstKnown, linearity } from "../../src/entries/protection";
import { currentLoop } from "../../src/entries/sensor";
import type { Amplitude } from "../../src/index";
import { checkRemarks, linearityRemarks, pairRemarks } from "../../src/report/index";

const loop = currentLoop("0 to 8 mm/s rms");
// 20.5 mA of 0 to 8 mm/s are 8.25 mm/s, which is what every higher level reads
const [high, low] = [loop.reading(20.9), loop.reading(3.9)];

describe("a level that was clipped by its loop", () => {
  it.each<[known: string | Amplitude, indicated: string | Amplitude, verdict: string]>([
    ["8.2 mm/s rms", high, "undecided"],
    ["9 mm/s rms", high, "undecided"],
    // whatever lies above 8.25 is too much for 5
    ["5 mm/s rms", high, "fail"],
    ["5 mm/s rms", low, "fail"],
    [high, "8.25 mm/s rms", "undecided"],
    [high, "2 mm/s rms", "undecided"],
    ["8.2 mm/s rms", loop.reading(20.4), "pass"],
  ])("%j and %j: %s", (known, indicated, verdict) => {
    const check = checkAgainstKnown({ known, indicated, tolerance: "5 %" });
    expect(check.verdict).toBe(verdict);
    const clipped = typeof indicated === "object" && indicated.state !== "in range";
    expect(checkRemarks(check).some((text) => text.includes("clipped"))).toBe(clipped || typeof known === "object");
  });

  it("is named as found, as left and among several levels, and after JSON", () => {
    const back = JSON.parse(JSON.stringify(high)) as Amplitude;
    const pair = asFoundAsLeft({ known: "8.2 mm/s rms", asFound: "8 mm/s rms", asLeft: back, tolerance: "5 %" });
    expect(pair.asLeft.verdict).toBe("undecided");
    expect(pairRemarks(pair).join(" ")).toContain("as left: the level shown is above range of its loop");
    const several = linearity(
      [
        { known: "4 mm/s rms", indicated: "4 mm/s rms" },
        { known: "8.2 mm/s rms", indicated: high },
      ],
      { tolerance: "5 %" },
    );
    expect(several.verdict).toBe("undecided");
    expect(linearityRemarks(several)[0]).toContain("at 8.20 mm/s rms: the level shown");
  });
});
