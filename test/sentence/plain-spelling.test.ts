import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { parseSentence, plainSpelling } from "../../src/sentence/index";
import { codeOf } from "../refusals/refusal-of";

/** How people write readings: common practice, no source. The arithmetic beside it is one's own. */
describe("readings as people write them", () => {
  it.each([
    ["2 gRMS", "2 g RMS"],
    ["2 G rms to m/s2 rms", "2 g rms to m/s2 rms"],
    ["2 Grms", "2 g rms"],
    ["7 mm/srms", "7 mm/s rms"],
    ["4 mm/s-rms => ips-pk, in/s pk", "4 mm/s rms to ips pk, in/s pk"],
    ["3 m/s²rms", "3 m/s² rms"],
    ["30 μmpp", "30 μm pp"],
    ["30 µmp-p", "30 µm p-p"],
    ["0.2 ips pk -> mm/s rms", "0.2 ips pk to mm/s rms"],
    ["0.2 ips pk→mm/s rms", "0.2 ips pk to mm/s rms"],
    ["0.2 ips pk in mm/s rms", "0.2 ips pk to mm/s rms"],
    ["3 mil pp at 25 Hz in mm/s rms, in/s pk", "3 mil pp at 25 Hz to mm/s rms, in/s pk"],
    ["5 in pp in mm pp", "5 in pp to mm pp"],
    ["12 mA of 0 to 1 in pp", "12 mA of 0 to 1 in pp"],
    ["5/8 ips pk", "0.625 ips pk"],
    ["1 1/2 mil pp", "1.5 mil pp"],
    ["1-1/2 mil pp", "1.5 mil pp"],
    ["⅝ ips pk", "0.625 ips pk"],
    ["1½ mil pp", "1.5 mil pp"],
    ["11/2 mil pp", "5.5 mil pp"],
  ])("%s is %s", (written, plain) => {
    expect(plainSpelling(written)).toBe(plain);
  });

  it.each([
    "5 in pk at 25 Hz",
    "4.1 mm/s rms at 1500 r/min to in/s pk",
    "95 dB re 1e-9 m/s",
    "2 Gal pk",
    "98 mV pk by 100 mV/g at 80 Hz",
    "3/4/2026 mm/s rms",
    "2 mm/s rms, crest factor 4",
    "4.9 ± 0.3 mm/s rms (k=2)",
  ])("%s stays as it is", (written) => {
    expect(plainSpelling(written)).toBe(written);
  });

  it.each(["5/0 ips pk", "0/8 ips pk", "1 000/8 ips pk", "1 5/4 ips pk", "1-3/3 mil pp"])(
    "%s is no fraction",
    (written) => {
      expect(codeOf(() => plainSpelling(written))).toBe("syntax");
    },
  );

  it("a fraction is the nearest number, and nothing changes twice", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 999 }),
        fc.integer({ min: 1, max: 63 }),
        fc.integer({ min: 2, max: 64 }),
        (whole, above, below) => {
          fc.pre(above < below);
          const once = plainSpelling(`${whole} ${above}/${below} ips pk`);
          expect(parseSentence(once).reading.value).toBe(whole + above / below);
          expect(plainSpelling(once)).toBe(once);
        },
      ),
    );
  });

  it("the detector stays to be told: 5/8 ips is refused", () => {
    expect(codeOf(() => parseSentence("5/8 ips"))).toBe("missing-detector");
    expect(codeOf(() => parseSentence("2 G"))).toBe("unknown-unit");
  });
});
