import { strToU8, zipSync } from "fflate";
import { describe, expect, it } from "vitest";
import { readArchive, unpack } from "../../../src/workbook/xlsx/zip";
import { writeArchive } from "../../../src/workbook/xlsx/write-zip";

const text = (bytes: Uint8Array) => new TextDecoder().decode(bytes);
const source = zipSync(
  {
    "b.xml": strToU8("<b/>".repeat(200)),
    "a/stored.bin": [strToU8("as it is"), { level: 0 }],
    "c.xml": strToU8("<c/>"),
  },
  { comment: "made by hand", mtime: new Date(2026, 4, 6, 7, 8, 10) },
);

describe("writeArchive(archive, replaced)", () => {
  it("with nothing replaced gives the bytes that were read", () => {
    expect(Buffer.compare(writeArchive(readArchive(source), new Map()), source)).toBe(0);
  });

  it("keeps the packed bytes, the order and the records of entries that are not replaced", () => {
    const before = readArchive(source);
    const after = readArchive(writeArchive(before, new Map([["b.xml", strToU8("new")]])));
    expect(after.entries.map((entry) => entry.name)).toEqual(["b.xml", "a/stored.bin", "c.xml"]);
    for (const name of ["a/stored.bin", "c.xml"]) {
      const [old, now] = [before, after].map((archive) => archive.entries.find((entry) => entry.name === name)!);
      expect(Buffer.compare(old!.raw, now!.raw)).toBe(0);
      expect(Buffer.compare(old!.header.subarray(0, 42), now!.header.subarray(0, 42))).toBe(0);
    }
    expect(text(unpack(after.entries[0]!))).toBe("new");
  });

  it("keeps what stands after an entry's data with it, as streaming writers put it", () => {
    // Sizes after the data instead of before it: bit 3, zeros in the header, and a descriptor.
    const archive = readArchive(source);
    const entry = archive.entries.find(({ name }) => name === "c.xml")!;
    entry.raw = Uint8Array.from([...entry.raw, 0x50, 0x4b, 7, 8, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12]);
    const streamed = writeArchive(archive, new Map());
    const again = writeArchive(readArchive(streamed), new Map([["b.xml", strToU8("x")]]));
    const [kept] = readArchive(again).entries.filter(({ name }) => name === "c.xml");
    expect(Buffer.compare(kept!.raw, entry.raw)).toBe(0);
  });
});
