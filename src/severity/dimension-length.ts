import { lazily } from "../core/index";
import { frameAt } from "./frame-size";
import { numberAt } from "./machine-numbers";

const PART = "(?:shaft|rotor|journal|bearing|impeller|wheel|pulley|coupling|pipe|flange|cylinder)";
const SIZE = "(?:diameter|diam\\.?|dia\\.?|radius|bore|length|width|thickness|depth)";
/** `Shaft diameter`, `bore of the shaft`, `Ø` or a part alone, up to its number. */
const before = /* @__PURE__ */ lazily(
  () =>
    new RegExp(
      `^(?:(?:${PART}[\\s-]+)?${SIZE}(?:[\\s:=]+(?:of|is|the|its|an?|${PART}))*[\\s:=([]+|[Øø⌀∅][\\s:=]*|(?:DN|(?:(?:delivery|total)[\\s-]+)?(?:head|lift))(?:\\s+of)?[\\s:=]*|(${PART})[\\s:=([]+)(?=[\\d.])`,
      "i",
    ),
);
/** `Diameter shaft` or `shaft bore` behind a number. */
const behind = /* @__PURE__ */ lazily(
  () =>
    new RegExp(
      `^[\\s-]+(?:${PART}[\\s-]+)?(?:${SIZE}|long|wide|thick|(?:(?:delivery|total)[\\s-]+)?(?:head|lift)|DN|wheel|impeller)(?![\\p{L}])(?:\\s+(?:of\\s+|the\\s+)*${PART}(?![\\p{L}]))?`,
      "iu",
    ),
);

/** How many characters a number takes that may be a length; none for what is none. */
function lengthAt(text: string, isPlain: boolean): number {
  const said = numberAt(text, "");
  if (said === undefined || frameAt(text) !== undefined) return 0;
  const { shaftHeight, height, ...others } = said.facts ?? {};
  if (Object.keys(others).length > 0 || said.speed !== undefined || said.apparent !== undefined) return 0;
  if (said.poles !== undefined || (isPlain && (shaftHeight ?? height) === undefined)) return 0;
  return said.length;
}

/**
 * How many characters a dimension at the beginning of a text takes that is no height: `shaft diameter 400 mm`,
 * `400 mm bore`, `pulley 400 mm`; none where no dimension is, nor for `shaft 400 mm`, which may be the height.
 */
export function dimensionLength(text: string): number {
  // H=45 m: the head of a pump, where H=280 mm is a shaft height
  const [head = ""] = /^H[\s:=]*[1-9]\d*(?:[.,]\d+)?\s*(?:m|ft)(?![\w/])/.exec(text) ?? [];
  if (head !== "") return head.length;
  const [lead = "", part] = before().exec(text) ?? [];
  if (!/^[\d.]/.test(text.slice(lead.length))) return 0;
  const length = lengthAt(text.slice(lead.length), part !== undefined || lead === "");
  if (length === 0) return 0;
  const [rest = ""] = behind().exec(text.slice(lead.length + length)) ?? [];
  const isOpen = lead === "" || part?.toLowerCase() === "shaft";
  return isOpen && rest === "" ? 0 : lead.length + length + rest.length;
}
