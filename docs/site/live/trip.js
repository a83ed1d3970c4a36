import { tripTimeline } from "../../../src/entries/chart";
import { coils, contacts, TripLogic, timerResets, tripEvents } from "../../../src/entries/protection";
import { VeladisError } from "../../../src/index";
import { answer, answering, chartPlace, choiceField, element, table, textField } from "./dom.js";
import { linkState } from "./link-state.js";
import { levelList, secondsOf } from "./number-list.js";

/** Histories of induced-draught fan 1, invented, one level a second, in mm/s RMS. */
const histories = {
  "gust, then a rise":
    "2.6 2.7 2.5 9.4 10.1 4.8 3.0 2.9 6.4 9.2 9.8 10.4 10.9 11.2 11.3 11.1 10.8 10.2 8.9 6.7 4.9 3.6 3.0 2.6",
  "hovering at the threshold": "8.7 8.9 9.1 8.9 9.2 8.8 9.1 9.2 9.1 9.3 8.9 9.2 9.1 9.2 9.3 8.8 8.4 8.2",
  "run-up through a resonance": "0.4 1.1 2.5 5.8 11.2 9.4 5.1 3.3 2.8 2.7 2.6 2.7 2.6 2.7 2.6",
};

/** The refusal of a reset after the last level, in the words of the page. */
function lateReset(written, count) {
  return new VeladisError("out-of-range", {
    expected: `Reset by hand at: a time within the levels, 0 to ${count} s; or leave it empty`,
    received: JSON.stringify(written),
  });
}

/** What is said of levels that do not trip: a delay that still runs may end in a trip. */
function quietText(events, seconds) {
  return events.at(-1)?.event === "timing"
    ? `Does not trip within these ${seconds} s; the on-delay still runs.`
    : "Does not trip.";
}

/** The trip of one channel, played over a history of levels. */
export function trip(place) {
  const chart = chartPlace();
  const result = answer("trip");
  const update = () => {
    state.keep();
    chart.show(() => "");
    const shown = names.find((name) => histories[name] === levels.text());
    example.control.value = shown ?? "";
    answering(
      result,
      () => {
        state.check();
        const settings = {
          threshold: threshold.read(),
          hysteresis: hysteresis.read(),
          onDelay: secondsOf(delay.text(), "On-delay"),
          timerResets: starts.read(),
          sensorFault: "alarm",
          latching: latching.read() === "yes",
          contact: contact.read(),
          coil: coil.read(),
        };
        const list = levelList(levels.read());
        const time = reset.text().trim() === "" ? undefined : secondsOf(reset.text(), "Reset by hand at");
        if (time > list.length) throw lateReset(reset.text(), list.length);
        const commands = time === undefined ? [] : [{ time, do: "reset" }];
        const events = new TripLogic(settings).run(list, 1, { excursions: true, commands });
        chart.show((width) => tripTimeline({ width, settings, levels: list, dt: 1, commands }));
        const tripped = events.find(({ event }) => event === "trip");
        return [
          element(
            "p",
            { className: "live-result" },
            tripped ? `Trips at ${tripped.time} s.` : quietText(events, list.length),
          ),
          ...(events.length > 0
            ? [
                table(
                  ["time in s", "event", "meaning"],
                  events.map(({ time, event, reason }) => [
                    String(Number(time.toFixed(6))),
                    event,
                    reason ?? tripEvents[event],
                  ]),
                ),
              ]
            : []),
        ];
      },
      state.texts,
    );
  };
  const threshold = textField("Threshold, with unit and detector", "9 mm/s rms", update);
  const hysteresis = textField("Hysteresis", "8 %", update);
  const delay = textField("On-delay in s", "8", update, { inputMode: "decimal" });
  const starts = choiceField("The delay starts over", [...timerResets], timerResets[0], update);
  const latching = choiceField("Latching", ["yes", "no"], "yes", update);
  const contact = choiceField("Contact", [...contacts], contacts[0], update);
  const coil = choiceField("Coil", [...coils], coils[0], update);
  const reset = textField("Reset by hand at, in s (may be left empty)", "22", update, { inputMode: "decimal" });
  const names = Object.keys(histories);
  const example = choiceField("Example history", [["", "none of them"], ...names], names[0], () => {
    if (example.read() !== "") {
      levels.put(histories[example.read()]);
      reset.put("");
    }
    update();
  });
  const levels = textField("Levels, one a second, in unit and detector of the threshold", histories[names[0]], update);
  levels.row.classList.add("live-wide");
  const state = linkState({ threshold, hysteresis, delay, starts, latching, contact, coil, reset, levels }, update);
  place.append(
    element(
      "div",
      { className: "live-form" },
      ...[threshold, hysteresis, delay, starts, latching, contact, coil, reset, example, levels].map(({ row }) => row),
    ),
    state.row,
    result,
    chart.place,
  );
  update();
}
