import { asFoundAsLeft, checkAgainstKnown, checkPoints, linearity } from "veladis/protection";
import { currentLoop } from "veladis/sensor";
import { describe, expect, it } from "vitest";
import { refusalOf } from "../refusals/refusal-of";

// common practice, no source: a device that shows zero at a vibration is dead, whatever its tolerance
describe("a device that shows nothing at a known level", () => {
  const known = "4 mm/s rms at 40 Hz";
  const loop = currentLoop("0 to 20 mm/s rms");

  it.each(["99 %", "3.9 mm/s rms", "6 dB"])("fails within a tolerance of %s", (tolerance) => {
    for (const indicated of ["0 mm/s rms", loop.reading(4), loop.reading(3.9)]) {
      expect(checkAgainstKnown({ known, indicated, tolerance })).toMatchObject({ verdict: "fail", call: "fail" });
      const unsure = { known, indicated, tolerance, uncertainty: "300 % (k=2)" };
      expect(checkAgainstKnown(unsure)).toMatchObject({ verdict: "fail", call: "fail" });
    }
  });

  it("fails at the live zero of a range that begins above zero, unless that is the known level", () => {
    const indicated = currentLoop("4 to 20 mm/s rms").reading(4);
    expect(checkAgainstKnown({ known: "4.1 mm/s rms", indicated, tolerance: "5 %" }).verdict).toBe("fail");
    expect(checkAgainstKnown({ known: "4 mm/s rms", indicated, tolerance: "5 %" }).verdict).toBe("pass");
  });

  it("fails in pairs, points and linearity", () => {
    const pair = { known, asFound: "0 mm/s rms", asLeft: "4 mm/s rms", tolerance: "99 %", uncertainty: "300 % (k=2)" };
    expect(asFoundAsLeft(pair).asFound.verdict).toBe("fail");
    const points = [
      { known, indicated: "0 mm/s rms" },
      { known: "8 mm/s rms at 40 Hz", indicated: "8 mm/s rms" },
    ];
    const rest = { tolerance: "99 %", uncertainty: "300 % (k=2)" };
    expect([checkPoints(points, rest).verdict, linearity(points, rest).verdict]).toEqual(["fail", "fail"]);
  });

  it.each(["100 %", "250 %", "4 mm/s rms", "0.5 in/s pk", "6.1 dB"])(
    "is let through by no tolerance of %s",
    (tolerance) => {
      expect(refusalOf(() => checkAgainstKnown({ known, indicated: "4 mm/s rms", tolerance }))).toMatchObject({
        code: "out-of-range",
        option: "tolerance",
      });
    },
  );
});
