import { perDecibel } from "../reading/index";
import { WELL_KNOWN_DIVISOR } from "./arithmetic";
import type { Graph, Input, Node } from "./node";

/** What the numbers of a graph owe to each input to first order, each in what it is written in. */
export interface FirstOrder {
  /** Those of the answer, signed: slope times standard uncertainty, one for each input; none for what depends on none. */
  readonly parts: readonly number[];
  /** Those of any number, by its place. */
  readonly partsAt: (place: number) => readonly number[];
  /** True where the slopes say too little on the way. */
  readonly isBent: boolean;
}

/** The change of a node's own value for one standard uncertainty of it. */
function ownPart({ value, isLevel }: Node, { uncertainty }: Input): number {
  const { standard, in: scale } = uncertainty;
  return scale === "dB" && !isLevel ? value * perDecibel * standard : standard;
}

/** A node scaled by 1 has its uncertainty as a share. */
function influencePart({ value }: Node, { uncertainty }: Input): number {
  const { standard, in: scale } = uncertainty;
  return value * (scale === "dB" ? perDecibel * standard : standard);
}

/** The change of a value for one standard uncertainty of the frequency it was converted at. */
function hertzPart({ value, isLevel }: Node, power: number, share: number): number {
  return isLevel ? (power * share) / perDecibel : value * power * share;
}

/** Carries the standard uncertainties of all inputs through the graph by the slopes (JCGM 100:2008, 5.1.2). */
export function firstOrder({ nodes, inputs, answer }: Graph): FirstOrder {
  const parts: (number[] | undefined)[] = [];
  let isBent = false;
  nodes.forEach((node, place) => {
    const { of, value, arithmetic, own, hertz, hz } = node;
    if (arithmetic === undefined && own === undefined) return;
    const mine = new Array<number>(inputs.length).fill(0);
    parts[place] = mine;
    const x = of.map((at) => (nodes[at] as Node).value);
    if (arithmetic !== undefined) {
      const slopes = arithmetic.slopes(x, value);
      if (
        arithmetic.isBent?.(
          x,
          value,
          of.map((at) => Math.hypot(...(parts[at] ?? []))),
          of.map((at) => parts[at] ?? []),
        )
      )
        isBent = true;
      of.forEach((at, k) => {
        parts[at]?.forEach((part, i) => {
          mine[i] = (mine[i] as number) + (slopes[k] as number) * part;
        });
      });
    }
    if (own !== undefined) {
      const input = inputs[own] as Input;
      mine[own] = of.length > 0 ? influencePart(node, input) : ownPart(node, input);
    }
    if (hertz !== undefined) {
      const share = (inputs[hertz] as Input).uncertainty.standard / (hz as number);
      const power = arithmetic?.power ?? 0;
      mine[hertz] = (mine[hertz] as number) + hertzPart(node, power, share);
      if (power < 0 && share > WELL_KNOWN_DIVISOR) isBent = true;
    }
  });
  // what was replaced has none
  return { parts: parts[answer] ?? [], partsAt: (place) => parts[place] ?? [], isBent };
}
