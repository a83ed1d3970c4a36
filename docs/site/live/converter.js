import { assumptions } from "../../../src/entries/facts";
import { convertAmplitude, equivalents, format, significant } from "../../../src/index";
import { answer, answering, element, table, textField } from "./dom.js";
import { linkState } from "./link-state.js";

/** One reading in the types a practitioner meets. */
export function converter(place) {
  const update = () => {
    state.keep();
    answering(
      result,
      () => {
        state.check();
        const at = frequency.read();
        const options = at === "" ? {} : { at };
        const written = reading.read();
        const wanted = target.read();
        const rows = equivalents(written, options);
        const assumed = new Set(rows.flatMap(({ rms, pk, pp }) => [rms, pk, pp].flatMap((one) => one.assumed)));
        const one = wanted === "" ? undefined : convertAmplitude(written, wanted, options);
        return [
          ...(one ? [element("p", { className: "live-result" }, format(one, { digits: 4 }))] : []),
          table(
            ["", "rms", "pk", "pp"],
            rows.map(({ unit, rms, pk, pp }) => [unit, ...[rms, pk, pp].map(({ value }) => significant(value))]),
          ),
          element(
            "p",
            {},
            rows.length === 2 ? "Give a frequency to see the other quantities. " : "",
            `Assumed where it was needed: ${[...assumed].map((name) => assumptions[name]).join("; ")}.`,
          ),
        ];
      },
      state.texts,
    );
  };
  const reading = textField("Reading, with unit and detector", "0.25 in/s pk", update);
  const frequency = textField("Frequency or shaft speed", "1500 r/min", update);
  const target = textField("Wanted in (may be left empty)", "mm/s rms", update);
  const result = answer("converter");
  const state = linkState({ reading, at: frequency, to: target }, update);
  place.append(element("div", { className: "live-form" }, reading.row, frequency.row, target.row), state.row, result);
  update();
}
