import { format } from "../../reading/index";
import { indexScript } from "./index-script";
import { bullets, section, table } from "./list-parts";
import type { Standing } from "./machine-report";
import { type Markup, markup } from "./markup";
import { cautionsBox, pageText } from "./page-frame";
import { marginWords, readingText, refusedPoints } from "./reading-text";
import type { ReportHead } from "./report-head";
import { countChips, countsOf, many, ORDER, standingChip, zoneOf } from "./standing";
import { zoneStep } from "./zone-chip";

/** A machine on the index, with its page. */
export interface IndexRow extends Standing {
  readonly page: string;
}

const titles = ["machine", "zone", "last reading", "findings", "alarm, trip", "check of the device"];

function row(one: IndexRow): Markup {
  const { machine, points, page, due, unjudged } = one;
  const { tag, description = "", alarm, trip } = machine;
  const kind = machine.machine.type ?? "kind not known";
  const [worst] = points;
  const { error, warning, note } = countsOf(one);
  const level = error > 0 ? "error" : warning > 0 ? "warning" : note > 0 ? "note" : "none";
  const reading = worst && [worst.verdict.point, readingText(worst)].filter(Boolean).join(" ");
  const words = [tag, description, kind].join(" ").toLowerCase();
  const sorts = [
    worst === undefined ? "" : zoneStep(worst),
    worst === undefined ? "" : 1 / worst.verdict.ratio,
    error * 1e6 + warning * 1e3 + note,
  ] as const;
  const set = [alarm, trip].map((level) => (level === undefined ? "none" : format(level)));
  return markup`<tr data-words="${words}" data-zone="${zoneOf(one)}" data-worst="${level}" data-kind="${kind}" data-check="${due.state}">
<th scope="row" data-sort="${tag}"><a class="tag" href="${page}">${tag}</a><span class="said">${[description, kind].filter(Boolean).join("; ")}</span></th>
<td data-sort="${sorts[0]}">${standingChip(one)}</td>
<td data-sort="${sorts[1]}">${reading === undefined && unjudged.length > 0 && markup`<span class="said">${refusedPoints(unjudged)}</span>`}${reading !== undefined && markup`<span class="said-first">${reading}</span><span class="said">${worst && marginWords(worst)}</span>${unjudged.length > 0 && markup`<span class="said">${refusedPoints(unjudged)}</span>`}`}</td>
<td data-sort="${sorts[2]}">${countChips(one)}</td>
<td data-name="alarm, trip">${set.map((level) => markup`<span class="line">${level}</span> `)}</td>
<td data-name="check" data-sort="${due.due ?? ""}">${due.state}${due.due !== null && markup` <span class="line">${due.due}</span>`}</td>
</tr>
`;
}

/** The index of a report: every machine, worst first, whole without a script. */
export function indexPage(head: ReportHead, rows: readonly IndexRow[]): string {
  const { name, on, from, refused, strangers } = head;
  const count = (is: (one: IndexRow) => boolean): number => rows.filter(is).length;
  const told = [
    [
      many(
        count(({ points: [worst] }) => worst !== undefined && zoneStep(worst) === 3),
        "machine",
      ),
      "in the worst zone",
    ],
    [
      many(
        count((one) => countsOf(one).error > 0),
        "machine",
      ),
      "with an error in the list",
    ],
    [
      many(
        count(({ due }) => due.isDue),
        "device",
      ),
      "to be checked",
    ],
    [
      many(
        count((one) => zoneOf(one) === "not judged"),
        "machine",
      ),
      "not judged: all readings refused",
    ],
    [
      many(
        count((one) => zoneOf(one) === "not read"),
        "machine",
      ),
      "not read",
    ],
    [many(new Set(refused.map(({ line }) => line)).size, "row"), "refused: no answer for them"],
  ] as const;
  const unread = rows.filter((one) => zoneOf(one) === "not read").map(({ machine }) => machine.tag);
  const body = markup`<header>
<p class="over">State of the protection on ${on}</p>
<h1>${name}</h1>
<ul class="standing">
${told.map(([many, what]) => markup`<li><strong>${many}</strong> ${what}</li>\n`)}</ul>
</header>
<main>
${cautionsBox()}${section(
  "refused",
  "Refused rows",
  refused.length === 0
    ? undefined
    : table(
        "What could not be read: no verdict is given for these",
        ["file", "line", "tag", "column", "why"],
        refused.map(({ file, line, tag, column, message }) => [
          file,
          line === 0 ? "" : `${line}`,
          tag,
          column ?? "the row",
          message,
        ]),
        ["file", "line", "tag", "column"],
      ),
  bullets(strangers),
)}<section id="machines">
<h2>Machines</h2>
<p class="aside">${ORDER}</p>
<p class="count">${many(rows.length, "machine")}</p>
<table class="machines">
<thead><tr>${titles.map((title) => markup`<th scope="col">${title}</th>`)}</tr></thead>
<tbody>
${rows.map(row)}</tbody>
</table>
</section>
${section("unread", "Not read", unread.length === 0 ? undefined : markup`<p>${rows.length === unread.length ? "No machine was read: no route was given, or none of its tags is on the list." : `No reading on the route: ${unread.join(", ")}.`}</p>\n`)}</main>
<footer>
<p>Made from ${from.join(", ")}. What is said of a machine stands on its own page, with its sources.</p>
</footer>
`;
  return pageText({ kind: "index", title: `${name}: state of the protection on ${on}`, script: indexScript, body });
}
