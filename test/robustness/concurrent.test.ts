import { Worker } from "node:worker_threads";
import * as root from "veladis";
import { evaluateLine, newSession } from "veladis/mathjs";
import * as protection from "veladis/protection";
import { builtInSchemes, classifier, classify, defineScheme } from "veladis/severity";
import { overall, overallStream, spectrum, spectrumStream } from "veladis/signal";
import { describe, expect, it } from "vitest";
import { settings } from "../trip/trip-settings";

const rate = 1000;
const wave = (hertz: number, size: number, count = 4000): Float64Array =>
  Float64Array.from({ length: count }, (_, i) => size * Math.sin((2 * Math.PI * hertz * i) / rate));

describe("one object serves many users at a time", () => {
  it("a converter and a judge, by a hundred that take turns", async () => {
    const convert = root.converter("in/s pk", "mm/s rms");
    const judge = classifier("iso-10816-3-2009", "group 2 rigid", "mm/s rms");
    const user = async (n: number) => {
      const zones: string[] = [];
      for (let i = 0; i < 20; i++) {
        const value = convert(n / 100 + i / 1000);
        await Promise.resolve();
        expect(value).toBe(root.convert(n / 100 + i / 1000, "in/s pk", "mm/s rms"));
        zones.push(judge(value));
        await Promise.resolve();
      }
      return zones;
    };
    const together = await Promise.all(Array.from({ length: 100 }, (_, n) => user(n)));
    for (const [n, zones] of together.entries()) expect(zones).toEqual(await user(n));
  });

  it("the settings of a trip, by many machines that take turns", () => {
    const frozen = Object.freeze({ ...settings });
    const machines = Array.from({ length: 20 }, () => new protection.TripLogic(frozen));
    for (let t = 0; t < 10; t++) machines.forEach((machine, n) => void machine.step(n % 2 === 0 ? 0.6 : 0.1, 0.5));
    expect(machines.map(({ status }) => status.state)).toEqual(
      machines.map((_, n) => (n % 2 === 0 ? "tripped" : "normal")),
    );
  });

  it("sessions of the calculator keep their variables apart", async () => {
    const sessions = Array.from({ length: 10 }, () => newSession());
    await Promise.all(sessions.map((session, n) => evaluateLine(`a = ${n + 1} mm/s rms`, session)));
    const texts = await Promise.all(sessions.map(async (session) => (await evaluateLine("a * 2", session)).text));
    expect(texts).toEqual(sessions.map((_, n) => `${root.significant(2 * (n + 1))} mm/s rms`));
  });
});

describe("streams share tables, but nothing that they write to", () => {
  const levelStream = () => overallStream({ rate, unit: "g", band: [10, 400], as: "mm/s rms", settlingTime: 0.5 });
  const lineStream = () => spectrumStream({ rate, unit: "g", segment: 500 });

  it.each([["levels", levelStream] as const, ["spectra", lineStream] as const])(
    "%s, piece by piece in turns",
    (_, made) => {
      const records = [wave(25, 1), wave(60, 2), wave(25, 0.5)];
      const alone = records.map((record) => {
        const stream = made();
        stream.push(record);
        return stream.read();
      });
      const streams = records.map(() => made());
      for (let i = 0; i < 4000; i += 300)
        streams.forEach((stream, n) => {
          stream.push((records[n] as Float64Array).subarray(i, i + 300));
          overall(wave(100, 3, 500), { rate, unit: "g", band: [10, 400], as: "um pp" });
        });
      for (const [n, stream] of streams.entries()) expect(stream.read()).toEqual(alone[n]);
    },
  );

  it("a stream that is fed while another reads its samples", () => {
    const inner = levelStream();
    const outer = levelStream();
    const samples = wave(25, 1);
    // a list whose elements are computed as they are read
    let turns = 0;
    const fed = new Proxy(Array.from(samples), {
      get(list, name, receiver) {
        if (name === "1000" && turns++ === 0) inner.push(wave(60, 2));
        return Reflect.get(list, name, receiver);
      },
    });
    outer.push(fed);
    const [alone, other] = [levelStream(), levelStream()];
    alone.push(samples);
    other.push(wave(60, 2));
    expect(outer.read()).toEqual(alone.read());
    expect(inner.read().value).toBeCloseTo(other.read().value, 9);
  });

  it("a spectrum is not changed by the next one", () => {
    const first = spectrum(wave(25, 1), { rate, unit: "g" });
    const before = Float64Array.from(first.values);
    spectrum(wave(60, 5), { rate, unit: "g" });
    expect(first.values).toEqual(before);
  });

  it("a record is left as it was", () => {
    const record = wave(25, 1);
    const before = record.slice();
    spectrum(record, { rate, unit: "g" });
    overall(record, { rate, unit: "g", band: [10, 400], as: "mm/s rms", detrend: "linear", edges: "-3 dB" });
    expect(record).toEqual(before);
  });
});

describe("definitions are plain data that can be sent to another thread", () => {
  it("every built-in scheme, and one of one's own, judge as before", () => {
    for (const scheme of builtInSchemes) expect(structuredClone(scheme)).toEqual(scheme);
    const [scheme] = builtInSchemes.filter(({ id }) => id === "iso-10816-3-2009");
    const sent = structuredClone(scheme);
    expect(defineScheme(sent as never).id).toBe("iso-10816-3-2009");
    const asked = { machine: "group 2 rigid" } as const;
    expect(classify("3 mm/s rms", { ...asked, scheme: sent as never }).zone).toBe("C");
  });

  it("settings, states, setpoints, baselines, checks, spectra and readings", () => {
    const logic = new protection.TripLogic(settings);
    logic.step(0.6, 1.5);
    const there = new protection.TripLogic(structuredClone(settings), structuredClone(logic.snapshot()));
    expect(there.step(0.6, 0.6)).toEqual(logic.step(0.6, 0.6));
    const baseline = protection.baseline([1, 1.1, 1.2, 1.05, 1.1], { as: "mm/s rms" });
    const limits = { scheme: "iso-10816-3-2009", machine: "group 2 rigid" } as const;
    expect(protection.proposeSetpoints({ ...limits, baseline: structuredClone(baseline) })).toEqual(
      protection.proposeSetpoints({ ...limits, baseline }),
    );
    for (const plain of [
      baseline,
      protection.proposeSetpoints({ ...limits, baseline }),
      protection.checkAgainstKnown({ known: "1 g pk", indicated: "1.01 g pk", tolerance: "5 %" }),
      spectrum(wave(25, 1), { rate, unit: "g" }),
      root.parseAmplitude("60 dB re 1 nm/s"),
      root.convertAmplitude("1 in/s pk at 25 Hz", "um pp"),
      classify("3 mm/s rms", limits),
    ])
      expect(structuredClone(plain)).toEqual(plain);
  });

  it("arrive in a worker", async () => {
    const worker = new Worker(
      'const { parentPort } = require("node:worker_threads"); parentPort.once("message", (m) => parentPort.postMessage(m));',
      { eval: true },
    );
    const logic = new protection.TripLogic(settings);
    logic.step(0.6, 2);
    const back = new Promise<{ settings: typeof settings; state: protection.TripState }>((resolve, reject) => {
      worker.once("message", resolve);
      worker.once("error", reject);
    });
    worker.postMessage({ settings, state: logic.snapshot(), schemes: builtInSchemes });
    const sent = await back;
    await worker.terminate();
    expect(new protection.TripLogic(sent.settings, sent.state).status.state).toBe("tripped");
  });
});
