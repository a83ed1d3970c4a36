import { nomograph as draw } from "../../../src/entries/chart";
import { classify, provenances } from "../../../src/entries/severity";
import { attempt, convertAmplitude, format, parseAmplitude, significant } from "../../../src/index";
import { digitsBeside } from "../../../src/severity/index";
import { answer, answering, chartPlace, choiceField, decadeSlider, element } from "./dom.js";
import { linkState } from "./link-state.js";

const FREQUENCY = [1, 2000];
const VELOCITY = [0.1, 100];

const classes = ["group 1 rigid", "group 1 flexible", "group 2 rigid", "group 2 flexible"];

/** The verdict on a reading; a slow machine has a wider band, and the chart shows it. */
function verdictOf(one, severity) {
  const usual = classify(one, severity);
  if (usual.band === null || one.hertz >= usual.band[0]) return usual;
  return classify(one, { ...severity, machine: `${severity.machine}, ${one.hertz * 60} r/min` });
}

/** The zone of a reading in words, with how its limits are known; outside the band of the scheme there is none. */
function zoneText(one, severity) {
  const told = `ISO 10816-3:2009, ${severity.machine}`;
  const speed = `${significant(one.hertz * 60)} r/min`;
  // a speed that the standard is not for leaves the sine as it is
  const verdict = attempt(() => verdictOf(one, severity));
  if (!verdict.ok) return `${told}: no zone at ${speed}. Expected: ${verdict.error.expected}.`;
  const { band, headline, word, verified, provenance, machine } = verdict.value;
  const at = machine.speed === undefined ? told : `${told} at ${speed}`;
  const [low, high] = band ?? [0, Number.POSITIVE_INFINITY];
  if (one.hertz < low || one.hertz > high) return `${at}: no zone here, the standard judges ${low} to ${high} Hz.`;
  const check = verified ? "" : ` Limits ${provenances[provenance].text}: check them against the standard.`;
  return `${at}: ${headline}, ${word}.${check}`;
}

/** The nomograph with one reading, moved by sliders or by the pointer. */
export function nomograph(place) {
  const chart = chartPlace();
  const result = answer("nomograph");
  const update = () => {
    state.keep();
    chart.show(() => "");
    answering(result, () => {
      state.check();
      const one = {
        ...parseAmplitude(`1 mm/s ${detector.read()}`),
        value: velocity.read(),
        hertz: frequency.read(),
      };
      const machine = group.read();
      const severity = machine === "none" ? undefined : { scheme: "iso-10816-3-2009", machine };
      const limits = severity ? Object.values(classify(one, severity).limits).map(({ value }) => value) : [];
      const beside = digitsBeside(one.value, limits);
      const [v, d, a] = [
        ["mm/s", "in/s"],
        ["um", "mil"],
        ["m/s2", "g"],
      ].map((units) =>
        units
          .map((unit) =>
            // beside a limit the reading keeps its side
            format(convertAmplitude(one, `${unit} ${one.detector}`), { digits: unit === "mm/s" ? beside : 3 }),
          )
          .join(" = "),
      );
      const system = units.read();
      chart.show((width) =>
        draw({
          width,
          units: system,
          detector: one.detector,
          frequency: FREQUENCY,
          velocity: VELOCITY,
          title: "One sine on all scales",
          readings: [{ reading: one, label: "" }],
          ...(severity && { severity }),
        }),
      );
      return [
        element(
          "p",
          { className: "live-result" },
          `${significant(one.hertz)} Hz, ${significant(one.hertz * 60)} r/min: ${v}`,
        ),
        element("p", {}, `${d}; ${a}.`),
        ...(severity ? [element("p", {}, zoneText(one, severity))] : []),
      ];
    });
  };
  const velocity = decadeSlider("Velocity", ...VELOCITY, 4, (v) => `${significant(v)} mm/s`, update);
  const frequency = decadeSlider("Frequency", ...FREQUENCY, 24.75, (f) => `${significant(f)} Hz`, update);
  const detector = choiceField("Detector", ["rms", "pk", "pp"], "rms", update);
  const units = choiceField(
    "Diagonals",
    [
      ["metric", "um and m/s2"],
      ["imperial", "mil and g"],
    ],
    "metric",
    update,
  );
  const group = choiceField("Zones of ISO 10816-3:2009", [["none", "none"], ...classes], "group 2 rigid", update);
  const move = ({ clientX, clientY, buttons, type }) => {
    const svg = chart.place.querySelector("svg");
    if (!svg || (type === "pointermove" && buttons !== 1)) return;
    const frame = svg.querySelector("path.veladis-axis").getBoundingClientRect();
    const [x, y] = [(clientX - frame.left) / frame.width, 1 - (clientY - frame.top) / frame.height];
    if (x < 0 || x > 1 || y < 0 || y > 1) return;
    frequency.set(FREQUENCY[0] * (FREQUENCY[1] / FREQUENCY[0]) ** x);
    velocity.set(VELOCITY[0] * (VELOCITY[1] / VELOCITY[0]) ** y);
    update();
  };
  chart.place.addEventListener("pointerdown", move);
  chart.place.addEventListener("pointermove", move);
  const state = linkState({ velocity, frequency, detector, diagonals: units, zones: group }, update);
  place.append(
    element("div", { className: "live-form" }, velocity.row, frequency.row, detector.row, units.row, group.row),
    state.row,
    result,
    chart.place,
  );
  update();
}
