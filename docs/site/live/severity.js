import { severityBar } from "../../../src/entries/chart";
import { classify, conditionText, machineTypes, schemeById, selectSchemes } from "../../../src/entries/severity";
import { VeladisError } from "../../../src/index";
import { answer, answering, chartPlace, choiceField, element, table, textField } from "./dom.js";

/** What a table says of the reading, or why it says nothing. */
function judged(reading, scheme, machine) {
  try {
    return classify(reading, { scheme, machine });
  } catch (error) {
    if (error instanceof VeladisError) return error;
    throw error;
  }
}

/** The tables that are for a machine, and what each says of a reading. */
export function severity(place) {
  const chart = chartPlace();
  const list = answer("schemes");
  const result = answer("severity");
  const asked = element("div", { className: "live-form" });
  const further = new Map();
  let machine = {};
  const nameplate = () => {
    const facts = {
      type: type.read(),
      power: power.read(),
      speed: speed.read(),
      shaftHeight: height.read(),
      support: support.read(),
      ...Object.fromEntries([...further].map(([fact, field]) => [fact, field.read()])),
    };
    const units = { power: "kW", speed: "r/min", shaftHeight: "mm" };
    return Object.fromEntries(
      Object.entries(facts)
        .filter(([, value]) => value !== "")
        .map(([fact, value]) => [fact, units[fact] && /^[\d.]+$/.test(value) ? `${value} ${units[fact]}` : value]),
    );
  };
  /** Fields for what the chosen table asks besides; what was answered stays answered. */
  const ask = () => {
    const one = selectSchemes(machine).candidates.find((candidate) => candidate.scheme === scheme.read());
    const wanted = (one?.missing ?? []).filter(({ fact }) => !(fact in nameplate()));
    for (const { fact, ask: words, allowed } of wanted) {
      if (further.has(fact)) continue;
      const field = allowed
        ? choiceField(`${fact}: ${words}`, [["", "not known"], ...allowed], "", choose)
        : textField(`${fact}: ${words}`, "", choose);
      further.set(fact, field);
      asked.append(field.row);
    }
  };
  const forget = () => {
    further.clear();
    asked.replaceChildren();
    ask();
    choose();
  };
  const choose = () => {
    const wanted = scheme.read();
    answering(list, () => {
      machine = nameplate();
      const { candidates } = selectSchemes(machine);
      const ids = candidates.map((one) => one.scheme);
      scheme.control.replaceChildren(
        ...candidates.map((one) =>
          element(
            "option",
            { value: one.scheme },
            `${one.standard}:${one.edition}, ${one.status === "applies" ? "applies" : "facts missing"}`,
          ),
        ),
      );
      if (ids.length > 0) scheme.control.value = ids.includes(wanted) ? wanted : ids[0];
      return [element("p", {}, `${candidates.length} tables may be for this machine.`)];
    });
    ask();
    update();
  };
  const update = () => {
    const id = scheme.read();
    chart.show(() => "");
    answering(result, () => {
      if (id === "") return [element("p", {}, "No built-in table is for this machine.")];
      const judgement = judged(reading.read(), id, machine);
      if (judgement instanceof VeladisError) throw judgement;
      const { zone, word, limits, margin, limit, standard, edition, cautions, machineClass } = judgement;
      chart.show((width) => severityBar({ width, judgement }));
      const decibels = Number.isFinite(margin.decibels) ? `, ${margin.decibels.toFixed(1)} dB to ${limit.name}` : "";
      return [
        element(
          "p",
          { className: "live-result" },
          `${judgement.kind === "zones" ? "Zone " : ""}${zone}: ${word}${decibels}`,
        ),
        element(
          "p",
          {},
          `${standard}:${edition}${Object.keys(machineClass).length > 0 ? `, ${conditionText(machineClass)}` : ""}. ${schemeById(id).title}.`,
        ),
        table(
          ["limit", "as printed", "known by"],
          Object.values(limits).map(({ name, printed, verified }) => [
            name,
            `${printed.value} ${printed.unit} ${printed.detector}`,
            verified ? "read in print" : "memory, check it",
          ]),
        ),
        element("ul", {}, ...cautions.map((caution) => element("li", {}, caution))),
      ];
    });
  };
  const type = choiceField("Machine", [["", "not known"], ...Object.keys(machineTypes)], "motor", choose);
  const power = textField("Rated power in kW", "132", choose, { inputMode: "decimal" });
  const speed = textField("Speed in r/min", "1485", choose, { inputMode: "decimal" });
  const height = textField("Shaft height in mm (electrical machines)", "315", choose, { inputMode: "decimal" });
  const support = choiceField("Support", [["", "not known"], "rigid", "flexible"], "rigid", choose);
  const reading = textField("Reading", "3.9 mm/s rms", update);
  const scheme = choiceField("Table", [], "", forget);
  place.append(
    element("div", { className: "live-form" }, type.row, power.row, speed.row, height.row, support.row, reading.row),
    list,
    element("div", { className: "live-form" }, scheme.row),
    asked,
    result,
    chart.place,
  );
  choose();
}
