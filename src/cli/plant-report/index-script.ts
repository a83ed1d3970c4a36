/**
 * The script of the index: it adds the means to sort and filter to a page that is whole without it. It touches nothing
 * but the rows that are there.
 */
export const indexScript = `"use strict";
(() => {
  const table = document.querySelector(".machines");
  const body = table.tBodies[0];
  const rows = [...body.rows];
  const count = document.querySelector(".count");
  const whole = count.textContent;
  const made = (name, text, parent) => {
    const one = document.createElement(name);
    one.textContent = text;
    parent.append(one);
    return one;
  };
  const tools = document.createElement("div");
  tools.className = "tools";
  tools.setAttribute("role", "search");
  tools.setAttribute("aria-label", "Filter the machines");
  const labelled = (text, name) => made(name, "", made("label", text, tools));
  const words = labelled("Words in tag, description or kind", "input");
  words.type = "search";
  const chosen = [["zone", "Zone"], ["worst", "Worst finding"], ["kind", "Kind"], ["check", "Check"]].flatMap(([key, text]) => {
    const values = [...new Set(rows.map((row) => row.dataset[key]))];
    if (values.length < 2) return [];
    if (key === "kind") values.sort();
    const select = labelled(text, "select");
    made("option", "all", select).value = "";
    for (const value of values) made("option", value, select).value = value;
    return [[key, select]];
  });
  const all = made("button", "Show all", tools);
  all.type = "button";
  const show = () => {
    const sought = words.value.toLowerCase().split(/\\s+/).filter(Boolean);
    let shown = 0;
    for (const row of rows) {
      const text = row.dataset.words;
      const is = sought.every((one) => text.includes(one)) && chosen.every(([key, { value }]) => value === "" || row.dataset[key] === value);
      row.hidden = !is;
      if (is) shown++;
    }
    const by = [...(sought.length > 0 ? ["words " + words.value.trim()] : []), ...chosen.filter(([, { value }]) => value !== "").map(([key, { value }]) => (key === "worst" ? "worst finding" : key) + " " + value)];
    count.textContent = by.length === 0 ? whole : shown + " of " + rows.length + " machines shown: " + by.join(", ");
  };
  words.addEventListener("input", show);
  for (const [, select] of chosen) select.addEventListener("change", show);
  all.addEventListener("click", () => {
    words.value = "";
    for (const [, select] of chosen) select.value = "";
    show();
  });
  const heads = [...table.tHead.rows[0].cells];
  const order = new Intl.Collator("en", { numeric: true, sensitivity: "base" });
  for (const [at, head] of heads.entries()) {
    const text = head.textContent;
    head.textContent = "";
    const button = made("button", text, head);
    button.type = "button";
    const key = (row) => row.cells[at].dataset.sort ?? row.cells[at].textContent.trim();
    button.addEventListener("click", () => {
      const falls = head.getAttribute("aria-sort") === "ascending";
      for (const other of heads) other.removeAttribute("aria-sort");
      head.setAttribute("aria-sort", falls ? "descending" : "ascending");
      const keys = new Map(rows.map((row) => [row, key(row)]));
      const sorted = [...rows].sort((a, b) => {
        const [x, y] = [keys.get(a), keys.get(b)];
        // what is not known stands last, whichever way
        if (x === "" || y === "") return (x === "") - (y === "");
        const apart = Number(x) - Number(y);
        return (falls ? -1 : 1) * (Number.isNaN(apart) ? order.compare(x, y) : apart);
      });
      body.append(...sorted);
    });
  }
  count.setAttribute("aria-live", "polite");
  count.before(tools);
})();
`;
