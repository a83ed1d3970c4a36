import { severityBar } from "../../../src/entries/chart";
import { assumptions } from "../../../src/entries/facts";
import {
  builtInSchemes,
  classify,
  conditionText,
  judge,
  machineTypes,
  marginText,
  provenances,
  schemeById,
} from "../../../src/entries/severity";
import { VeladisError } from "../../../src/index";
import { machineFacts } from "../../../src/severity/machine-facts";
import { answer, answering, chartPlace, choiceField, element, table, textField } from "./dom.js";
import { knownWords } from "./known-words.js";
import { linkState } from "./link-state.js";

const units = { power: "kW", speed: "r/min", shaftHeight: "mm" };

/** A number with the unit of its field; what has a unit already stays as it is. */
function withUnit(fact, text) {
  return units[fact] && /^[\d.,\s]+$/.test(text) ? `${text} ${units[fact]}` : text;
}

/** Items under a heading; nothing where there are none. */
function list(heading, items) {
  if (items.length === 0) return [];
  return [
    element("p", {}, element("strong", {}, heading)),
    element("ul", {}, ...[...new Set(items)].map((one) => element("li", {}, one))),
  ];
}

function schemeName({ standard, edition, machineClass }) {
  const labels = Object.keys(machineClass).length > 0 ? `, ${conditionText(machineClass)}` : "";
  return `${standard} (${edition})${labels}`;
}

/** What choosing a scheme by name takes for granted of the machine, where its facts do not say it. */
function takenByChoice({ machine, scheme }) {
  const { place, kind, within = {} } = schemeById(scheme);
  const condition = within.condition ?? (kind === "acceptance" ? "new" : "in service");
  const taken = { condition: [condition].flat().join(" or "), place };
  return Object.entries(taken)
    .filter(([fact]) => machine[fact] === undefined)
    .map(([fact, value]) => `${fact} ${value}: not given, assumed`);
}

/** The verdict in few words: where several schemes are possible, up to the worst zone that one of them leaves open. */
function headlineText({ headline, judgements = [], worst }) {
  const told = judgements.length > 1 ? headline.replace(/ or worse$/, ` to ${worst}`) : headline;
  return `${told[0].toUpperCase()}${told.slice(1)}`;
}

/** What was judged, by which schemes, and what it rests on. */
function verdictParts(verdict) {
  const { word, judgements = [verdict], limits, kind, possible } = verdict;
  const [first] = judgements;
  const isOne = possible.length === 1;
  const away = isOne ? `, ${marginText(verdict)}` : "";
  const meaning = kind === "grades" && isOne ? "" : `: ${word}`;
  return [
    element("p", { className: "live-result" }, `${headlineText(verdict)}${meaning}${away}`),
    ...(judgements.length > 1
      ? [
          element("p", {}, `${judgements.length} schemes are possible for this machine; the worst governs.`),
          table(
            ["scheme", "verdict"],
            judgements.map((one) => [schemeName(one), one.headline]),
          ),
        ]
      : []),
    element("p", {}, `Limits of ${schemeName(first)}. ${schemeById(first.scheme).title}.`),
    table(
      ["limit", "in the table", "known by"],
      Object.values(limits).map(({ name, printed, provenance }) => [
        name,
        `${Number(printed.value.toPrecision(6))} ${printed.unit} ${printed.detector}`,
        provenances[provenance].cell,
      ]),
    ),
    ...list("Assumed", [
      ...(verdict.judgements === undefined ? takenByChoice(verdict) : []),
      ...verdict.assumedFacts,
      ...verdict.assumed.map((name) => assumptions[name]),
    ]),
    ...list("Set aside", verdict.setAside),
    ...list(
      "Not judged",
      verdict.unjudged.map(({ as, because }) => `limits in ${as}: ${because}`),
    ),
    ...list("Cautions", verdict.cautions),
  ];
}

const PLUS_MINUS = /±|\+\/?-/;

/** The refusal of a reading with its uncertainty, which this page does not carry. */
function uncertain(written) {
  return new VeladisError("out-of-range", {
    expected: `a reading without ±: the command veladis judge takes one, as in veladis judge "4.9 ± 0.3 mm/s rms (k=2)" --machine "..."`,
    received: written,
  });
}

/** The verdict on a reading by what is known of a machine. */
export function severity(place) {
  const chart = chartPlace();
  const result = answer("severity");
  const nameplate = () => {
    const facts = { type: type.read(), power: power.read(), speed: speed.read(), shaftHeight: height.read() };
    const given = Object.entries(facts).filter(([, text]) => text !== "");
    const data = Object.fromEntries(given.map(([fact, text]) => [fact, withUnit(fact, text)]));
    // a number field that holds no number is refused, never set aside
    const { speed: turns, ...others } = data;
    machineFacts(turns === undefined || / to /.test(turns) ? others : data);
    // hertz alone could be those of the mains
    const running = /Hz/i.test(data.speed ?? "") ? `running speed ${data.speed}` : data.speed;
    const words = [data.type, data.power, running, data.shaftHeight && `shaft height ${data.shaftHeight}`];
    return [...words, support.read(), where.read(), further.read()].filter(Boolean).join(", ");
  };
  const update = () => {
    state.keep();
    chart.show(() => "");
    result.replaceChildren();
    answering(
      result,
      () => {
        state.check();
        const machine = nameplate();
        const id = scheme.read();
        const written = reading.read();
        if (PLUS_MINUS.test(written)) throw uncertain(written);
        const verdict =
          id === "" ? judge(written, machine) : classify(written, { scheme: id, machine, assume: "lowest limits" });
        chart.show((width) => severityBar({ width, judgement: verdict }));
        return [element("p", {}, `Machine: ${machine}.`), ...verdictParts(verdict)];
      },
      state.texts,
    );
  };
  const number = { inputMode: "decimal" };
  const type = choiceField("Machine", [["", "not known"], ...Object.keys(machineTypes)], "motor", update);
  const power = textField("Rated power in kW", "132", update, number);
  const speed = textField("Speed in r/min", "1485", update, number);
  const height = textField("Shaft height in mm (electrical machines)", "315", update, number);
  const support = choiceField("Support", [["", "not known"], "rigid", "flexible"], "rigid", update);
  const where = choiceField("Measured on", [["", "not known"], "housing", "shaft"], "", update);
  const further = textField("Further words, such as category II or new", "", update);
  const reading = textField("Reading", "3.9 mm/s rms", update);
  const scheme = choiceField(
    "Scheme",
    [
      ["", "all that the known facts admit"],
      ...builtInSchemes.map(({ id, standard, edition }) => [id, `${standard} (${edition}): ${id}`]),
    ],
    "",
    update,
  );
  const fields = [type, power, speed, height, support, where, further, reading, scheme];
  const state = linkState({ type, power, speed, height, support, where, words: further, reading, scheme }, update);
  place.append(
    element("div", { className: "live-form" }, ...fields.map(({ row }) => row)),
    state.row,
    result,
    chart.place,
    knownWords(),
  );
  update();
}
