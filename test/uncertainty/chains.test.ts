import { type UncertaintyOf, uncertaintyOf } from "veladis/uncertainty";
import { describe, expect, it } from "vitest";
import { polar, randomChain, repeatable } from "./random-chain";

/** Standard deviation of many draws that share no code with the library. */
function deviationOf(draw: () => number, count: number): number {
  const first = draw();
  let [sum, squares] = [0, 0];
  for (let i = 0; i < count; i++) {
    const away = draw() - first;
    sum += away;
    squares += away ** 2;
  }
  return Math.sqrt(squares / count - (sum / count) ** 2);
}

const random = repeatable(20_261_127);
const chains = Array.from({ length: 120 }, () => {
  const chain = randomChain(random, 1 + Math.floor(random() * 8), 0.05);
  return { ...chain, answer: uncertaintyOf(chain as never, { draws: 50_000 }) };
});

/** Four standard deviations of a standard deviation of so many draws, as a share. */
const noise = (count: number) => 4 / Math.sqrt(2 * count);

describe("random chains of steps", () => {
  const small = chains.filter(({ answer }) => answer.method === "first order" && answer.parts.length > 0);

  it("are mostly known to first order, and some are not", () => {
    expect(small.length).toBeGreaterThan(60);
    expect(chains.length - small.length).toBeGreaterThan(15);
  });

  // the whole property, by a million draws of many chains: node bench/uncertainty.mjs --count N
  it("have to first order the uncertainty of Monte Carlo within 1 %", () => {
    for (const { history, answer } of small) {
      const drawn = uncertaintyOf({ history } as never, { method: "Monte Carlo", draws: 50_000, seed: 7 });
      expect(Math.abs(answer.standard / drawn.standard - 1), JSON.stringify(history)).toBeLessThan(
        0.01 + noise(50_000),
      );
    }
  });

  it("have the uncertainty of draws by another engine", () => {
    const uniform = repeatable(4);
    const normal = polar(uniform);
    for (const { history, draw, answer } of chains) {
      const drawn = deviationOf(() => draw(normal, uniform), 50_000);
      const allowed = answer.method === "first order" ? 0.01 + noise(50_000) : 2 * noise(50_000);
      expect(Math.abs(answer.standard / drawn - 1), JSON.stringify(history)).toBeLessThan(allowed);
    }
  });

  it("come back whole from JSON", () => {
    for (const { history, answer } of chains.slice(0, 40)) {
      const back = JSON.parse(JSON.stringify({ history })) as Pick<UncertaintyOf, "history">;
      expect(uncertaintyOf(back, { draws: 50_000 })).toEqual(answer);
      // the answer is one more step of the history, which nothing is made of
      expect(() => uncertaintyOf(answer)).toThrow(/steps that arithmetic can follow/);
    }
  });
});
