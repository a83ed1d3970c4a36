import { SaxesParser } from "saxes";
import { nomograph, severityBar, spectrumChart, trendChart, tripTimeline } from "veladis/chart";
import { classify } from "veladis/severity";
import { spectrum } from "veladis/signal";
import { describe, expect, it } from "vitest";
import { fanLevels, fanSettings } from "../../docs/site/charts";
import { hostileScheme } from "./hostile-scheme";
import { hostileTexts, obeyed, shownAs } from "./hostile-texts";

/** Elements, attributes and texts of XML, by a strict parser; throws for what is none. */
function readXml(xml: string): { tags: Set<string>; attributes: Set<string>; texts: string[] } {
  const read = { tags: new Set<string>(), attributes: new Set<string>(), texts: [] as string[] };
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }) => {
    read.tags.add(name);
    for (const attribute of Object.keys(attributes)) read.attributes.add(attribute);
  });
  parser.on("text", (text) => void read.texts.push(text));
  for (const kind of ["comment", "cdata", "processinginstruction", "doctype"] as const) {
    parser.on(kind, () => {
      throw new Error(`${kind} in a chart`);
    });
  }
  parser.write(xml).close();
  return read;
}

const samples = Float64Array.from({ length: 2048 }, (_, i) => Math.sin((2 * Math.PI * 50 * i) / 2048));
const lines = spectrum(samples, { rate: 2048, unit: "g", as: "mm/s rms", lowest: 5 });

/** Every chart with the text wherever one from outside may stand; `title` and `description` are asked for apart. */
const drawings: Readonly<Record<string, (text: string, named: boolean) => string>> = {
  "severity bar": (text, named) => {
    const judgement = classify("3 mm/s rms", { scheme: hostileScheme(text), machine: {} });
    return severityBar({ judgement: judgement as never, ...(named && { title: text, description: text }) });
  },
  nomograph: (text, named) =>
    nomograph({
      readings: [{ reading: "1 mm/s rms at 25 Hz", label: text }],
      severity: { scheme: hostileScheme(text), machine: {} },
      ...(named && { title: text, description: text }),
    }),
  trend: (text, named) =>
    trendChart({
      readings: [
        { time: 0, reading: 1 },
        { time: 9, reading: 3 },
      ],
      as: "mm/s rms",
      timeUnit: text,
      severity: { scheme: hostileScheme(text), machine: {} },
      ...(named && { title: text, description: text }),
    }),
  spectrum: (text, named) => spectrumChart({ spectrum: lines, ...(named && { title: text, description: text }) }),
  timeline: (text, named) =>
    tripTimeline({ settings: fanSettings, levels: fanLevels, dt: 1, ...(named && { title: text, description: text }) }),
};

describe.each(Object.entries(drawings))("%s", (_, draw) => {
  const plain = readXml(draw("plain", true));

  it.each(hostileTexts.map((text) => [JSON.stringify(text), text] as const))("%s is a text", (_, text) => {
    for (const named of [false, true]) {
      const svg = draw(text, named);
      const read = readXml(svg);
      for (const tag of read.tags) expect(plain.tags).toContain(tag);
      for (const attribute of read.attributes) expect(plain.attributes).toContain(attribute);
      expect(obeyed(svg)).toBeUndefined();
      const shown = shownAs(text.replace(/[\t\n\r\u2028\u2029]/g, " "));
      if (named) expect(read.texts.slice(0, 2)).toEqual([shown, shown]);
    }
  });
});
