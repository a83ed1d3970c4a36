/** Elements, fields and answers of the live pages; texts are always set as texts. */
import { nearest, VeladisError } from "../../../src/core/index";
import { withoutPlusMinus } from "./without-plus-minus.js";

let count = 0;

/** An element with properties and children. */
export function element(name, properties = {}, ...children) {
  const made = document.createElement(name);
  for (const [key, value] of Object.entries(properties)) {
    if (key in made && key !== "list") made[key] = value;
    else made.setAttribute(key, value);
  }
  made.append(...children);
  return made;
}

/** A field with its label above it. */
function labelled(words, control) {
  control.id = `live-${++count}`;
  return element("div", { className: "live-field" }, element("label", { htmlFor: control.id }, words), control);
}

/** A field for text; `change` runs at every keystroke. */
export function textField(words, value, change, properties = {}) {
  const control = element("input", { type: "text", value, autocomplete: "off", spellcheck: false, ...properties });
  // on paper a field would cut what is longer than itself
  const whole = element("span", { className: "live-print", "aria-hidden": "true" }, value);
  control.addEventListener("input", () => {
    whole.textContent = control.value;
    change();
  });
  const row = labelled(words, control);
  row.append(whole);
  return {
    row,
    read: () => withoutPlusMinus(control.value.trim()),
    text: () => control.value,
    put: (text) => {
      control.value = text;
      whole.textContent = text;
    },
    control,
  };
}

/**
 * A choice among texts, or pairs of value and text. What a link chooses and there is none of is shown as such, and
 * refused when it is read: nothing is judged by the first choice instead.
 */
export function choiceField(words, options, value, change) {
  const pairs = options.map((one) => (Array.isArray(one) ? one : [one, one]));
  const control = element("select", {}, ...pairs.map(([of, text]) => element("option", { value: of }, text)));
  control.value = value;
  const known = pairs.map(([of]) => of);
  const forget = () => {
    for (const one of [...control.options]) if (!known.includes(one.value) && !one.selected) one.remove();
  };
  control.addEventListener("change", () => {
    forget();
    change();
  });
  return {
    row: labelled(words, control),
    read: () => {
      if (known.includes(control.value)) return control.value;
      throw new VeladisError("unknown-option", {
        expected: `a choice of the field "${words}"`,
        received: JSON.stringify(control.value),
        didYouMean: nearest(control.value, known.filter(Boolean)),
        // an empty value has words on the page
        allowed: pairs.map(([, text]) => text),
      });
    },
    text: () => control.value,
    put: (text) => {
      if (!known.includes(text)) control.append(element("option", { value: text }, `${text}: unknown`));
      control.value = text;
      forget();
    },
    control,
  };
}

/** A slider over decades: its place is the logarithm of its value. A value that was put stays exact until it is moved. */
export function decadeSlider(words, low, high, value, textOf, change) {
  const control = element("input", { type: "range", min: Math.log10(low), max: Math.log10(high), step: 0.005 });
  let exact = value;
  let strange;
  const set = (to) => {
    exact = Math.min(Math.max(to, low), high);
    strange = undefined;
    control.value = Math.log10(exact);
    control.setAttribute("aria-valuetext", textOf(exact));
  };
  const read = () => {
    if (strange === undefined) return exact;
    throw new VeladisError("out-of-range", {
      expected: `${words}: a number from ${low} to ${high}, such as ${value}; move the slider to choose one`,
      received: JSON.stringify(strange),
    });
  };
  control.addEventListener("input", () => {
    set(10 ** Number(control.value));
    change();
  });
  set(value);
  // at first the reading is where the slider is seen
  exact = 10 ** Number(control.value);
  return {
    row: labelled(words, control),
    read,
    set,
    text: () => strange ?? String(Number(exact.toPrecision(6))),
    put: (text) => {
      const number = text.trim() === "" ? Number.NaN : Number(text);
      if (number >= low && number <= high) return set(number);
      strange = text;
      control.setAttribute("aria-valuetext", `${text}: unknown`);
    },
    control,
  };
}

/** A table with a heading row; the first cell of each row is its heading. */
export function table(heads, rows) {
  const cell = (name, scope) => (content) => element(name, scope ? { scope } : {}, content);
  return element(
    "div",
    { className: "live-scroll", tabIndex: 0, role: "group", "aria-label": heads.filter(Boolean).join(", ") },
    element(
      "table",
      {},
      element("thead", {}, element("tr", {}, ...heads.map(cell("th", "col")))),
      element(
        "tbody",
        {},
        ...rows.map(([first, ...rest]) => element("tr", {}, cell("th", "row")(first), ...rest.map(cell("td")))),
      ),
    ),
  );
}

/** A place for an answer, read out when it changes. */
export function answer(name) {
  return element("div", { className: "live-answer", role: "status", "data-answer": name });
}

/** A place for a chart, which is drawn anew when the place gets another width. */
export function chartPlace() {
  const place = element("div", { className: "live-chart" });
  let draw = () => "";
  let width = 0;
  const paint = () => {
    place.innerHTML = draw(Math.max(280, Math.min(Math.floor(place.clientWidth), 760)));
  };
  new ResizeObserver(() => {
    if (Math.abs(place.clientWidth - width) < 2) return;
    width = place.clientWidth;
    paint();
  }).observe(place);
  return {
    place,
    show: (next) => {
      draw = next;
      paint();
    },
  };
}

/** What was refused, whole: the library cuts long texts, and the fields of the page have them. */
function wholeText(received, texts) {
  return received.replace(/"(.*)…"/s, (cut, begin) => {
    const start = JSON.parse(`"${begin}"`);
    const text = texts.find((one) => one.includes(start));
    return text === undefined ? cut : JSON.stringify(text.slice(text.indexOf(start)));
  });
}

/**
 * Runs what fills an answer; what the library refuses is shown in its place.
 *
 * @param texts - the texts of the fields, of which one may be refused
 */
export function answering(place, fill, texts = () => []) {
  try {
    place.replaceChildren(...fill());
    place.classList.remove("live-refused");
  } catch (error) {
    if (error?.name !== "VeladisError") throw error;
    const { expected, received, didYouMean, allowed } = error;
    const hint = didYouMean
      ? `Did you mean ${didYouMean.join(" or ")}?`
      : allowed
        ? `Allowed: ${allowed.join(", ")}.`
        : "";
    place.classList.add("live-refused");
    place.replaceChildren(
      element("p", {}, element("strong", {}, "Expected: "), expected),
      element("p", {}, element("strong", {}, "Received: "), wholeText(received, texts())),
      ...(hint ? [element("p", {}, hint)] : []),
    );
    return false;
  }
  return true;
}
