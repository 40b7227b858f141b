import fc from "fast-check";
import { deflateSync } from "fflate";
import { deflateRawSync } from "node:zlib";
import { afterEach, describe, expect, it } from "vitest";
import { nodeUnpacking } from "../../../src/workbook/node/unpacking";
import { unpackBy, unpacking } from "../../../src/workbook/xlsx/unpacking";

const script = unpacking();
const WAYS = { script, node: nodeUnpacking };
const PACKED = {
  script: (bytes: Uint8Array) => deflateSync(bytes, { level: 5 }),
  node: (bytes: Uint8Array) => deflateRawSync(bytes),
};
const LARGE = 200_000;

/** Bytes that pack well, and bytes that do not; some longer than what is unpacked in one step. */
const data = fc.oneof(
  fc.uint8Array({ maxLength: 2_000 }),
  fc
    .uint8Array({ minLength: 1, maxLength: 50 })
    .map((bytes) => Uint8Array.from({ length: LARGE }, (_, i) => bytes[i % bytes.length]!)),
  fc.uint8Array({ minLength: LARGE, maxLength: LARGE, size: "max" }),
);

describe.each(Object.entries(WAYS))("unpacking by %s", (_, way) => {
  it("unpacks what was packed in either way", () => {
    fc.assert(
      fc.property(data, fc.constantFrom(...Object.values(PACKED)), (bytes, packed) => {
        expect(Buffer.compare(way.unpack(packed(bytes), bytes.length), bytes)).toBe(0);
      }),
      { numRuns: 20 },
    );
  });

  it("gives the checksum of ISO-HDLC, whose check value is published in the catalogue of CRC algorithms", () => {
    expect(way.crc32(new TextEncoder().encode("123456789"))).toBe(0xcbf43926);
  });

  it("gives more than may come of it, and not all of it, where there is more", () => {
    const zeros = deflateSync(new Uint8Array(50_000_000), { level: 9 });
    const unpacked = way.unpack(zeros, 1_000);
    expect(unpacked.length).toBeGreaterThan(1_000);
    expect(unpacked.length).toBeLessThan(1_000_000);
  });

  it("unpacks nothing to nothing", () => expect(way.unpack(new Uint8Array(), 400)).toHaveLength(0));

  it.each([
    ["what is cut short", PACKED.script(new TextEncoder().encode("drawers ".repeat(50))).subarray(0, 9)],
    ["what was never packed", Uint8Array.of(0xff, 0xff, 0xff, 0xff)],
  ])("throws on %s", (_, packed) => {
    expect(() => way.unpack(packed, 400)).toThrow();
  });
});

describe("unpackBy(unpacking)", () => {
  afterEach(() => unpackBy());

  it("is the way that archives are unpacked from then on, until it is called with none", () => {
    unpackBy(nodeUnpacking);
    expect(unpacking()).toBe(nodeUnpacking);
    unpackBy();
    expect(unpacking()).toBe(script);
  });
});
