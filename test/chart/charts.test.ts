import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { charts, fanLevels, fanSettings } from "../../docs/site/charts";
import { chartColours, nomograph, severityBar, spectrumChart, trendChart, tripTimeline } from "../../src/entries/chart";
import { TripLogic } from "../../src/entries/protection";
import { builtInSchemes, classify, judge, type Scheme } from "../../src/entries/severity";
import { density } from "../../src/entries/signal";
import { convert, type VeladisError } from "../../src/index";
import { codeOf } from "../refusals/refusal-of";
import { confirmedGroup2 } from "../severity/confirmed-limits";
import { all, type Node, parsed, words } from "./svg";

const number = (node: Node | undefined, name: string): number => Number(node?.attributes[name]);

describe.each(Object.entries(charts))("%s", (_, draw) => {
  it.each([280, 360, 640, 1200])(
    "at %d pixels is well-formed, named, described and holds no broken number",
    (width) => {
      const svg = draw(width);
      const root = parsed(svg);
      expect([root.name, root.attributes.role, root.attributes.width]).toEqual(["svg", "img", String(width)]);
      expect(root.children.slice(0, 3).map(({ name }) => name)).toEqual(["title", "desc", "style"]);
      expect(root.children[0]?.text.length).toBeGreaterThan(5);
      expect(root.children[1]?.text.length).toBeGreaterThan(40);
      expect(svg).not.toMatch(/NaN|Infinity|undefined|\bid=|<script|https?:\/\/(?!www\.w3\.org\/2000\/svg)/);
    },
  );

  it("is the same every time", () => {
    expect(draw(640)).toBe(draw(640));
  });
});

describe("texts", () => {
  const nasty = fc.string({ unit: "binary", maxLength: 30 });
  const judgement = classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });

  it("of any content stay texts", () => {
    fc.assert(
      fc.property(nasty, nasty, (title, description) => {
        const root = parsed(severityBar({ judgement, title, description }));
        expect(all(root, "script")).toEqual([]);
      }),
    );
    const attack = `</title><script>alert("&'")</script>`;
    expect(parsed(severityBar({ judgement, title: attack })).children[0]?.text).toBe(attack);
    expect(words(nomograph({ readings: [{ reading: "1 mm/s rms at 25 Hz", label: attack }] }))).toContain(attack);
  });

  it("say that limits are from memory, wherever they are", () => {
    const severity = { scheme: "iso-20816-3-2022", machine: "group 2 rigid" } as const;
    const said = (svg: string): boolean => words(svg).join(" ").includes("from memory");
    expect(said(nomograph({ severity }))).toBe(true);
    expect(said(trendChart({ readings: [{ time: 0, reading: 1 }], as: "mm/s rms", severity }))).toBe(true);
    expect(said(severityBar({ judgement: classify("3.9 mm/s rms", severity) }))).toBe(true);
    expect(words(severityBar({ judgement })).join(" ")).toContain("a page whose making is unknown: check them");
    const printed = classify("3.9 mm/s rms", { scheme: "iso-10816-5-2000", machine: "group 3" });
    expect(printed.verified).toBe(true);
    expect(words(severityBar({ judgement: printed })).join(" ")).not.toMatch(/from memory|check them/);
  });

  it("say who confirmed limits, all or in part, and where the printed copy has another limit", () => {
    const said = (scheme: Scheme) => {
      const severity = { scheme, machine: "group 2 rigid" };
      const drawn = [
        severityBar({ judgement: classify("3.9 mm/s rms", severity) }),
        trendChart({ readings: [{ time: 0, reading: 1 }], as: "mm/s rms", severity }),
      ];
      return drawn.map((svg) => words(svg).join(" "));
    };
    const by = "confirmed by H. Example, 2024-03-04, p. 12";
    for (const text of said(confirmedGroup2(/./))) {
      expect(text).toContain(`ISO 20816-3:2022, limits ${by}.`);
      expect(text).not.toMatch(/from memory|check them|DIFFERS/);
    }
    for (const text of said(confirmedGroup2(/C\/D/))) {
      expect(text).toContain(
        `ISO 20816-3:2022, limits from memory; in part C/D mm/s rms ${by}: check them against the standard`,
      );
    }
    for (const text of said(confirmedGroup2(/C\/D/, (shipped) => shipped * 0.9))) {
      expect(text).toContain("DIFFERS FROM THE TABLE AS SHIPPED: ");
    }
  });
});

describe("severity bar of a verdict", () => {
  const frame = (svg: string): [number, number] | undefined => {
    const one = all(parsed(svg), "rect", "possible")[0];
    return one && [number(one, "x"), number(one, "x") + number(one, "width")];
  };
  const zones = (svg: string): [number, number][] =>
    all(parsed(svg), "rect", "zone").map((one) => [number(one, "x"), number(one, "x") + number(one, "width")]);
  const titleOf = (svg: string): string | undefined => parsed(svg).children[0]?.text;

  it("of one possible zone names it and has no frame", () => {
    const svg = severityBar({ judgement: judge("4.1 mm/s rms", "pump 90 kW 2980 r/min category II") });
    expect(titleOf(svg)).toBe("4.10 mm/s rms: zone B");
    expect(frame(svg)).toBeUndefined();
  });

  it.each([
    [
      "a displacement not judged",
      classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 1 rigid" }),
      "zone B or worse",
      [1, 3],
      "Not judged, limits in um rms",
    ],
    ["two schemes", judge("2.0 mm/s rms", "motor 1485 r/min rigid"), "zone B to C", [1, 2], "ISO 20816-3:2022: zone B"],
    [
      "a word that is not understood",
      judge("6 mil pp", "motor 400 kW rigid housing, wibble"),
      "zone B or worse",
      [1, 3],
      'Set aside: "wibble"',
    ],
  ] as const)("of %s says so in words and frames what is possible", (_, judgement, headline, [from, to], note) => {
    const svg = severityBar({ judgement });
    expect(titleOf(svg)).toMatch(new RegExp(`: ${headline}$`));
    expect(parsed(svg).children[1]?.text).toContain(`${headline}, `);
    expect(parsed(svg).children[1]?.text).toContain(`Possible: ${judgement.possible.join(", ")}.`);
    const [start, end] = frame(svg) as [number, number];
    const bands = zones(svg);
    expect(start).toBeCloseTo((bands[from] as [number, number])[0] + 1, 1);
    expect(end).toBeCloseTo((bands[to] as [number, number])[1] - 1, 1);
    expect(words(svg).join(" ")).toContain(note);
  });

  it("of a displacement whose place nobody said has both answers, never one letter", () => {
    const judgement = judge("5 mil pp", "motor 400 kW 1485 r/min rigid");
    expect(judgement.headline).toMatch(/^shaft . *.*, housing .*: state the place$/);
    const svg = severityBar({ judgement });
    expect(titleOf(svg)).toBe(`5.00 mil pp: ${judgement.headline}`);
    expect(words(svg).join(" ")).toContain("The zones drawn are those of bearing housings");
    expect(words(svg)).toContain("at least 6.98 mm/s rms");
    const turbine = severityBar({ judgement: judge("100 um pp", "steam turbine 12 MW 5400 r/min rigid") });
    // B of the shaft is no zone of the housing's scale
    expect(all(parsed(turbine), "rect", "possible")).toHaveLength(0);
  });

  it("refuses what lacks a part of a judgement", () => {
    const whole = judge("4.1 mm/s rms", "pump 90 kW 2980 r/min category II");
    for (const name of ["headline", "possible", "setAside", "unjudged"]) {
      expect(
        codeOf(() => severityBar({ judgement: { ...whole, [name]: undefined } })),
        name,
      ).toBe("missing-option");
    }
  });
});

describe("trend with zones", () => {
  it("names limits of another quantity that it does not show", () => {
    const severity = { scheme: "iso-10816-3-2009", machine: "group 1 rigid" } as const;
    const svg = trendChart({ readings: [{ time: 0, reading: 1 }], as: "mm/s rms", severity });
    expect(words(svg).join(" ")).toContain("Not shown: the limits in um rms, by which the zone may be worse.");
  });
});

describe("nomograph", () => {
  const pointOf = (reading: string): Node | undefined =>
    all(parsed(nomograph({ readings: [reading], width: 640 })), "circle", "point")[0];

  it("shows one vibration at one place, however it is written", () => {
    const inch = pointOf("0.25 in/s pk at 1500 r/min");
    const mil = pointOf(`${convert(0.25, "in/s pk", "mil pp", { at: "1500 r/min" })} mil pp at 25 Hz`);
    expect(mil?.attributes).toEqual(inch?.attributes);
  });

  it("rises with velocity and runs with frequency", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.2, max: 40, noNaN: true }),
        fc.double({ min: 1.1, max: 900, noNaN: true }),
        (v, f) => {
          const low = pointOf(`${v} mm/s rms at ${f} Hz`);
          expect(number(pointOf(`${v * 1.5} mm/s rms at ${f} Hz`), "cy")).toBeLessThan(number(low, "cy"));
          expect(number(pointOf(`${v} mm/s rms at ${f * 1.5} Hz`), "cx")).toBeGreaterThan(number(low, "cx"));
        },
      ),
      { numRuns: 40 },
    );
  });

  it("puts 100 um pk at 10 Hz, 6.283 mm/s pk, on its diagonal (v = 2 pi f d; Thomson, section 1.3)", () => {
    const svg = nomograph({ detector: "pk", readings: ["100 um pk at 10 Hz"] });
    const at = all(parsed(svg), "circle")[0];
    const onLine = all(parsed(svg), "path", "rise").some(({ attributes }) => {
      const [x1, y1, x2, y2] = (attributes.d?.match(/-?[\d.]+/g) ?? []).map(Number) as [number, number, number, number];
      const along = (number(at, "cx") - x1) / (x2 - x1);
      return Math.abs(y1 + along * (y2 - y1) - number(at, "cy")) < 0.1;
    });
    expect(onLine).toBe(true);
  });

  it("has decades of one length, so that diagonals stand at 45 degrees", () => {
    for (const { attributes } of all(parsed(nomograph()), "path", "fall")) {
      const [x1, y1, x2, y2] = (attributes.d?.match(/-?[\d.]+/g) ?? []).map(Number) as [number, number, number, number];
      if (Math.hypot(x2 - x1, y2 - y1) > 40) expect((y2 - y1) / (x2 - x1)).toBeCloseTo(1, 1);
    }
  });

  it("never grows much higher than it is wide", () => {
    const root = parsed(nomograph({ width: 400, frequency: [20, 50], velocity: [0.001, 1000] }));
    expect(number(root, "height")).toBeLessThan(700);
    expect(parsed(nomograph({ width: 280, frequency: [1e-6, 1e12], velocity: [1e-9, 1e9] })).name).toBe("svg");
  });

  it("parts zones where the readings change theirs", () => {
    const severity = { scheme: "iso-10816-3-2009", machine: "group 2 rigid" } as const;
    const root = parsed(nomograph({ severity, readings: ["2.8 mm/s rms at 100 Hz"] }));
    const bounds = all(root, "path", "bound").map(({ attributes }) => attributes.d ?? "");
    const y = Number(bounds[1]?.split(",").at(-1));
    expect(number(all(root, "circle")[0], "cy")).toBeCloseTo(y, 1);
  });

  it("refuses what has no place", () => {
    expect(codeOf(() => nomograph({ readings: ["1 mm/s rms"] }))).toBe("missing-frequency");
    expect(codeOf(() => nomograph({ readings: ["0 mm/s rms at 25 Hz"] }))).toBe("not-positive");
    expect(codeOf(() => nomograph({ frequency: [10, 1] }))).toBe("out-of-range");
    expect(codeOf(() => nomograph({ units: "nautical" as "metric" }))).toBe("unknown-option");
  });
});

describe("trip timeline", () => {
  const spans = (svg: string): [string, number, number][] =>
    all(parsed(svg), "rect", "on").map(({ attributes }) => ["on", Number(attributes.x), Number(attributes.width)]);

  it("opens the contact when the logic trips, and closes it when it is reset", () => {
    const options = { settings: fanSettings, levels: fanLevels, dt: 1, commands: [{ time: 22, do: "reset" }] } as const;
    const events = new TripLogic(fanSettings).run(fanLevels, 1, { commands: options.commands });
    const [trip, reset] = ["trip", "reset"].map((name) => events.find(({ event }) => event === name)?.time) as [
      number,
      number,
    ];
    const svg = tripTimeline({ ...options, width: 640 });
    const perSecond = (640 - 46 - 16) / fanLevels.length;
    const contact = spans(svg).at(-1);
    expect(contact?.[1]).toBeCloseTo(trip * perSecond, 0);
    expect((contact?.[2] ?? 0) + 1).toBeCloseTo((reset - trip) * perSecond, 0);
  });

  it("shows what the logic says, for any history", () => {
    const levels = fc.array(fc.double({ min: 0, max: 12, noNaN: true }), { minLength: 1, maxLength: 40 });
    fc.assert(
      fc.property(levels, fc.integer({ min: 0, max: 5 }), fc.boolean(), (history, onDelay, latching) => {
        const settings = { ...fanSettings, onDelay, latching };
        const trips = new TripLogic(settings).run(history, 1).filter(({ event }) => event === "trip").length;
        const end = history.length;
        const last = new TripLogic(settings)
          .run(history, 1)
          .filter(({ event, time }) => event === "trip" && time >= end).length;
        const svg = tripTimeline({ settings, levels: history, dt: 1 });
        const opened = words(svg).filter((word) => word === "trip").length;
        expect(opened > 0).toBe(trips > 0);
        expect(opened).toBeLessThanOrEqual(trips);
        // each trip before the end opens the contact once, unless two spans touch
        if (latching) expect(spans(svg).length > 0).toBe(trips - last > 0);
      }),
      { numRuns: 60 },
    );
  });

  it("thins a day of seconds without losing its peak", () => {
    const day = Float64Array.from({ length: 86_400 }, (_, i) => (i === 40_000 ? 9.87 : 3 + Math.sin(i)));
    const svg = tripTimeline({ settings: fanSettings, levels: day, dt: 1, height: 200 });
    expect(svg.length).toBeLessThan(80_000);
    const path = all(parsed(svg), "path", "data")[0]?.attributes.d ?? "";
    const highest = Math.min(
      ...[...path.matchAll(/V?([\d.]+),?([\d.]*)/g)].map(([, a, b]) => Number(b || a)).filter((y) => y > 0),
    );
    expect(highest).toBeLessThan(25);
  });

  it("stays small and quick where the contact chatters all day", () => {
    const day = Float64Array.from({ length: 86_400 }, (_, i) => (i % 2 === 0 ? 10 : 3));
    const svg = tripTimeline({ settings: { ...fanSettings, onDelay: 0, latching: false }, levels: day, dt: 1 });
    expect(svg.length).toBeLessThan(400_000);
    expect(parsed(svg).name).toBe("svg");
  });

  it("leaves a gap where the sensor failed, and refuses junk", () => {
    const levels = [3, Number.NaN, 3];
    expect(codeOf(() => tripTimeline({ settings: fanSettings, levels, dt: 1 }))).toBe("not-a-number");
    expect(tripTimeline({ settings: fanSettings, levels, dt: 1, nan: "sensor fault" })).not.toContain("NaN");
    expect(codeOf(() => tripTimeline({ settings: fanSettings, levels: [], dt: 1 }))).toBe("out-of-range");
  });
});

describe("trend", () => {
  const readings = [1, 2, 4, 3].map((reading, time) => ({ time, reading }));

  it("puts higher readings higher, later ones further right", () => {
    const points = all(parsed(trendChart({ readings, as: "mm/s rms" })), "circle");
    const [ys, xs] = [points.map((one) => number(one, "cy")), points.map((one) => number(one, "cx"))];
    expect([...xs].sort((a, b) => a - b)).toEqual(xs);
    expect((ys[2] ?? 0) < (ys[3] ?? 0) && (ys[3] ?? 0) < (ys[1] ?? 0) && (ys[1] ?? 0) < (ys[0] ?? 0)).toBe(true);
  });

  it("reads any unit, and refuses another quantity and mixed times", () => {
    expect(trendChart({ readings: [{ time: 0, reading: "0.25 in/s pk" }], as: "mm/s rms" })).toContain("the last 4.49");
    expect(codeOf(() => trendChart({ readings: [{ time: 0, reading: "1 g pk" }], as: "mm/s rms" }))).toBe(
      "missing-frequency",
    );
    expect(
      codeOf(() =>
        trendChart({
          readings: [
            { time: 0, reading: 1 },
            { time: new Date(0), reading: 1 },
          ],
          as: "mm/s rms",
        }),
      ),
    ).toBe("wrong-type");
    expect(codeOf(() => trendChart({ readings: [], as: "mm/s rms" }))).toBe("missing-option");
  });
});

describe("spectrum", () => {
  const values = Float64Array.from({ length: 5000 }, (_, k) => (k === 2500 ? 2 : 0.01));

  it("loses no line, and marks the orders of the shaft speed", () => {
    const svg = spectrumChart({
      spectrum: { unit: "mm/s", detector: "rms", resolution: 0.1, values },
      speed: "50 Hz",
      orders: [1, 2, 3.5],
    });
    expect(words(svg)).toEqual(expect.arrayContaining(["1x", "2x", "3.5x"]));
    expect(svg).toContain("the highest 2.00 at 250.0 Hz");
    const ys = (all(parsed(svg), "path", "data")[0]?.attributes.d?.match(/,([\d.]+)/g) ?? []).map((y) =>
      Number(y.slice(1)),
    );
    expect(Math.min(...ys)).toBeLessThan(20);
  });

  it("draws in decades too: those of the lines, and four at most", () => {
    const ticksOf = (lines: ArrayLike<number>): string[] =>
      words(spectrumChart({ spectrum: { unit: "g", detector: "pk", resolution: 1, values: lines }, scale: "log" }));
    expect(ticksOf(values)).toEqual(expect.arrayContaining(["0.01", "0.1", "1", "10"]));
    expect(ticksOf(values)).not.toContain("0.001");
    expect(ticksOf([0, 1e-9, 2])).toEqual(expect.arrayContaining(["0.001", "0.01", "0.1", "1", "10"]));
    expect(ticksOf([0, 1e-9, 2])).not.toContain("0.0001");
    expect(ticksOf([0, 3, 3])).toEqual(expect.arrayContaining(["1", "10"]));
    expect(ticksOf([0, 0, 0])).toContain("0");
  });

  // MIL-STD-810 and its kin print profiles so: straight lines on double logarithmic paper
  it("draws a density on double logarithmic paper, where a power of the frequency is a straight line", () => {
    const power = Float64Array.from({ length: 1001 }, (_, k) => (k === 0 ? 0 : 10 / k));
    const svg = spectrumChart({
      spectrum: { unit: "g2/Hz", resolution: 1, values: power },
      scale: "log",
      frequencyScale: "log",
    });
    expect(svg).toContain("<title>Density in g2/Hz</title>");
    expect(words(svg)).toEqual(expect.arrayContaining(["1", "10", "100", "0.01"]));
    const [d = ""] = all(parsed(svg), "path", "data").map(({ attributes }) => attributes.d);
    const points = [...d.matchAll(/([\d.]+),([\d.]+)/g)].map(([, x, y]) => [Number(x), Number(y)] as const);
    const [[x0, y0], [x1, y1]] = [points[0], points.at(-1)] as [readonly [number, number], readonly [number, number]];
    for (const [x, y] of points) expect(y).toBeCloseTo(y0 + ((y1 - y0) * (x - x0)) / (x1 - x0), 0);
  });

  it("takes what density returns, and refuses a logarithmic scale from 0 Hz", () => {
    const psd = density(
      Float64Array.from({ length: 4096 }, (_, i) => Math.sin(i * i)),
      { rate: 1024, unit: "g" },
    );
    expect(spectrumChart({ spectrum: psd, frequencyScale: "log" })).toContain("Density in g2/Hz from 2 to 512 Hz");
    expect(() => spectrumChart({ spectrum: psd, frequencyScale: "log", frequency: [0, 100] })).toThrow(/above zero/);
    expect(() => spectrumChart({ spectrum: psd, frequencyScale: "octaves" as "log" })).toThrow(/of the frequencies/);
  });
});

describe("severity bar", () => {
  it("stands within the band of its zone, for readings of any size", () => {
    fc.assert(
      fc.property(fc.double({ min: 0, max: 60, noNaN: true }), (value) => {
        const judgement = classify(`${value.toFixed(6)} mm/s rms`, {
          scheme: "iso-10816-3-2009",
          machine: "group 2 rigid",
        });
        const root = parsed(severityBar({ judgement }));
        const at = number(all(root, "line", "data")[0], "x1");
        const band = all(root, "rect", "zone")[judgement.zones.indexOf(judgement.zone)];
        expect(at).toBeGreaterThanOrEqual(number(band, "x") - 0.02);
        expect(at).toBeLessThanOrEqual(number(band, "x") + number(band, "width") + 0.02);
      }),
    );
  });

  it("draws a chart with named grades and a level in decibels", () => {
    const judgement = classify("110 dB re 1e-9 m/s", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });
    expect(severityBar({ judgement })).toContain("0.316 mm/s rms: zone A");
  });
});

describe("every built-in table", () => {
  it.each(builtInSchemes.map((scheme) => [scheme.id, scheme] as const))("%s: its zones can be drawn", (_, scheme) => {
    const severity = { scheme, machine: { speed: "1490 r/min" }, assume: "lowest limits" } as const;
    try {
      expect(parsed(nomograph({ severity })).name).toBe("svg");
    } catch (error) {
      // A table that asks what must not be assumed says so.
      expect((error as VeladisError).code).toMatch(/missing-fact|out-of-range/);
    }
  });
});

describe("colours", () => {
  const linear = (c: number): number => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4);
  const channels = (hex: string): number[] => [1, 3, 5].map((i) => Number.parseInt(hex.slice(i, i + 2), 16) / 255);
  const mixed = (over: string, under: string, share: number): number[] =>
    channels(over).map((c, i) => c * share + (channels(under)[i] as number) * (1 - share));
  const luminance = (rgb: number[]): number => {
    const [r = 0, g = 0, b = 0] = rgb.map(linear);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  /** Contrast ratio of WCAG 2.1, success criterion 1.4.3. */
  const contrast = (a: number[], b: number[]): number => {
    const [high = 0, low = 0] = [luminance(a), luminance(b)].sort((x, y) => y - x);
    return (high + 0.05) / (low + 0.05);
  };

  it.each(Object.entries(chartColours))(
    "%s: texts 4.5, data 3 against paper and the worst zone",
    (_, { paper, ink, muted, zone, data }) => {
      const worst = mixed(zone, paper, 0.38);
      for (const ground of [channels(paper), worst]) {
        expect(contrast(channels(ink), ground)).toBeGreaterThan(4.5);
        expect(contrast(channels(data), ground)).toBeGreaterThan(3);
      }
      expect(contrast(channels(muted), channels(paper))).toBeGreaterThan(4.5);
    },
  );

  it.each(Object.entries(chartColours))("%s: four zones are told apart in grey", (_, { paper, zone }) => {
    const greys = [0, 1, 2, 3].map((i) => luminance(mixed(zone, paper, 0.05 + 0.11 * i)));
    for (let i = 1; i < 4; i++) {
      const [a, b] = [greys[i - 1] as number, greys[i] as number];
      expect((Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05)).toBeGreaterThan(1.1);
    }
  });
});

describe("options", () => {
  const judgement = classify("3.9 mm/s rms", { scheme: "iso-10816-3-2009", machine: "group 2 rigid" });

  it("are checked", () => {
    expect(codeOf(() => severityBar({ judgement, width: 100 }))).toBe("out-of-range");
    expect(codeOf(() => severityBar({ judgement, width: Number.NaN }))).toBe("not-a-number");
    expect(codeOf(() => severityBar({ judgement, theme: "sepia" as "dark" }))).toBe("unknown-option");
    expect(codeOf(() => severityBar(undefined as never))).toBe("missing-option");
  });

  it("set the colours: by the reader's system, or one in any case", () => {
    expect(severityBar({ judgement })).toContain("prefers-color-scheme:dark");
    expect(severityBar({ judgement, theme: "light" })).not.toContain("prefers-color-scheme");
    expect(severityBar({ judgement, theme: "dark" })).toContain('class="veladis-chart veladis-dark"');
  });
});

describe("the small print of a verdict by several schemes", () => {
  const print = (svg: string) => words(svg).join(" ");

  it("says of which scheme an assumption is, where the others do not make it", () => {
    const text = print(severityBar({ judgement: judge("2.0 mm/s rms", "motor 1485 r/min rigid") }));
    expect(text).toContain("Assumed: condition in service: not given, assumed; place housing: not given, assumed.");
    expect(text).toContain("Assumed for ISO 10816-1:1995, Annex B: power up to 15 kW: not given, assumed.");
  });

  it("frames no zone of the other place's scale", () => {
    const svg = severityBar({ judgement: judge("100 um pp", "steam turbine 12 MW 5400 r/min rigid") });
    expect(svg).not.toContain('class="veladis-possible"');
    expect(print(svg)).toContain("the other place has limits of its own");
  });
});
