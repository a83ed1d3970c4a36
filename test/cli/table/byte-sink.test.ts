import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { byteSink } from "../../../src/cli/table/byte-sink";

/** Bytes that the sink has room for at first. */
const FIRST = 2 ** 18;

describe("bytes gathered for one write", () => {
  it("are what was added, in its order, and none is left when they are taken", () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 40 })), (parts) => {
        const sink = byteSink();
        for (const [i, part] of parts.entries()) {
          if (i % 2 === 0) sink.bytes(part);
          else sink.text(Buffer.from(part).toString("latin1"));
        }
        expect(sink.take()).toEqual(Buffer.concat(parts));
        expect(sink.take()).toHaveLength(0);
      }),
    );
  });

  it.each([
    ["up to the room there is", FIRST - 1, 1],
    ["a byte beyond it", FIRST, 1],
    ["far beyond it at once", 3, 5 * FIRST],
    ["beyond twice the room, by what was there", FIRST, FIRST + 1],
  ])("%s", (_, first, second) => {
    const parts = [Buffer.alloc(first, "a"), Buffer.alloc(second, "µ", "latin1"), Buffer.from("end")] as const;
    const asBytes = byteSink();
    for (const part of parts) asBytes.bytes(part);
    expect(Buffer.compare(asBytes.take(), Buffer.concat(parts))).toBe(0);
    const asText = byteSink();
    for (const part of parts) asText.text(part.toString("latin1"));
    expect(Buffer.compare(asText.take(), Buffer.concat(parts))).toBe(0);
    // what is taken stays as it is
    asText.text("one");
    const one = asText.take();
    asText.text("two");
    expect(one.toString()).toBe("one");
  });
});
