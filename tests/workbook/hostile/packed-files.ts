import { deflateRawSync } from "node:zlib";
import { unzipSync } from "fflate";
import { oneSheet, zip } from "../support/handmade";
import { A1, SUM, good, row } from "./file-parts";
import { sheetWith, type HostileCase } from "./hostile-case";

/** Files that are packed to mislead. */
export const PACKED_FILES: HostileCase[] = [
  {
    title: "a part of blanks",
    expect: { refused: /unpacks to too much/ },
    make: () => sheetWith(row(SUM), " ".repeat(50_000_000)),
  },
  {
    title: "a bomb",
    expect: { refused: /unpacks to too much/ },
    make: () => zip({ "[Content_Types].xml": new Uint8Array(40_000_000) }),
  },
  {
    title: "a hundred parts of a megabyte that nothing needs",
    expect: A1,
    make: () =>
      oneSheet(row(SUM), {
        parts: Object.fromEntries(Array.from({ length: 100 }, (_, i) => [`xl/media/${i}.xml`, " ".repeat(1_000_000)])),
      }),
  },
  {
    title: "a size that is less than the truth",
    expect: { refused: /more than it says|overlap|damaged/ },
    make: () => patched(good, DIRECTORY, 24, 10),
  },
  {
    title: "a size that is more than the truth",
    expect: { refused: /does not unpack|damaged|too much/ },
    make: () => patched(good, DIRECTORY, 24, 1_000_000),
  },
  {
    title: "a packed size beyond the file",
    expect: { refused: /damaged|no workbook/ },
    make: () => patched(good, DIRECTORY, 20, 0x7fffffff),
  },
  {
    title: "an offset beyond the file",
    expect: { refused: /damaged|no workbook/ },
    make: () => patched(good, DIRECTORY, 42, 0x7fffffff),
  },
  { title: "two parts in one place", expect: { refused: /overlap/ }, make: () => patched(good, DIRECTORY, 42, 0) },
  {
    title: "a directory beyond the file",
    expect: { refused: /damaged|no workbook/ },
    make: () => patched(good, END, 16, 0x7fffffff),
  },
  {
    title: "a directory with more entries than it has",
    expect: { refused: /damaged|no workbook/ },
    make: () => patched(good, END, 8, 0x00ff00ff),
  },
  {
    title: "packed data that are none",
    expect: { refused: /does not unpack/ },
    make: () => patched(good, LOCAL, 60, 0xffffffff, false),
  },
  {
    title: "data packed three times over",
    expect: { refused: /not well-formed|not UTF-8/ },
    make: () =>
      withBytes("xl/workbook.xml", deflateRawSync(deflateRawSync(deflateRawSync(new Uint8Array(100_000_000))))),
  },
];

const [DIRECTORY, LOCAL, END] = [0x02014b50, 0x04034b50, 0x06054b50];

/** A file with a number in it changed, at so many bytes behind a signature's last or first place. */
function patched(bytes: Uint8Array, signature: number, at: number, value: number, last = true): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  const places = Array.from({ length: copy.length - 4 }, (_, i) => i).filter(
    (i) => view.getUint32(i, true) === signature,
  );
  view.setUint32((last ? places.at(-1)! : places[0]!) + at, value, true);
  return copy;
}

function withBytes(part: string, bytes: Uint8Array): Uint8Array {
  return zip({ ...unzipSync(good), [part]: bytes });
}
