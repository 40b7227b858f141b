import { FileFault, shown } from "./fault";
import { unpacking } from "./unpacking";
import { DIRECTORY, END, LOCAL } from "./zip-signatures";

/** What an archive may hold, so that a small file cannot fill the memory. */
const LIMITS = {
  entries: 10_000,
  entrySize: 256 * 1024 * 1024,
  totalSize: 512 * 1024 * 1024,
  /** Unpacked to packed size; spreadsheets' own parts stay well under it. */
  ratio: 1_000,
} as const;

/** One file of the archive. `header` is its record in the directory, `raw` all its bytes as they stand. */
export interface Entry {
  name: string;
  header: Uint8Array;
  raw: Uint8Array;
  offset: number;
  method: number;
  crc: number;
  packed: Uint8Array;
  size: number;
}

export interface Archive {
  entries: Entry[];
  /** What stands before the first entry, and the archive's comment. */
  lead: Uint8Array;
  comment: Uint8Array;
}

/**
 * Reads an archive's directory and finds every entry's bytes, without unpacking any.
 * @throws FileFault where it is damaged, encrypted, or too large
 */
export function readArchive(given: Uint8Array): Archive {
  // Node's Buffer is a Uint8Array whose slices share their bytes; a plain one copies.
  const bytes = new Uint8Array(given.buffer, given.byteOffset, given.byteLength);
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const start = view.getUint32(end + 16, true);
  const stop = start + view.getUint32(end + 12, true);
  if (count === 0xffff || start === 0xffffffff) throw new FileFault("The file is a 64-bit archive, which is not read.");
  if (count > LIMITS.entries) throw new FileFault(`The file holds ${count} parts; at most ${LIMITS.entries} are read.`);
  if (stop > end || view.getUint16(end + 8, true) !== count) throw damaged();
  const entries = readDirectory(bytes, view, start, stop, count);
  checkSizes(entries);
  setRaw(entries, bytes, start);
  const first = Math.min(start, ...entries.map((entry) => entry.offset));
  return { entries, lead: bytes.subarray(0, first), comment: bytes.subarray(end + 22) };
}

/** Unpacks an entry, stopping as soon as it grows beyond what its directory record says. */
export function unpack(entry: Entry): Uint8Array {
  const data = entry.method === 0 ? entry.packed : inflate(entry);
  if (data.length !== entry.size || unpacking().crc32(data) !== entry.crc) {
    throw new FileFault(`The file is damaged: its part ${shown(entry.name)} does not unpack to what it should.`);
  }
  return data;
}

function inflate({ name, packed, size }: Entry): Uint8Array {
  let data: Uint8Array;
  try {
    data = unpacking().unpack(packed, size);
  } catch {
    throw new FileFault(`The file is damaged: its part ${shown(name)} does not unpack.`);
  }
  if (data.length > size) throw new FileFault(`The file's part ${shown(name)} unpacks to more than it says.`);
  return data;
}

function findEnd(view: DataView): number {
  const earliest = Math.max(0, view.byteLength - 22 - 0xffff);
  for (let at = view.byteLength - 22; at >= earliest; at--) {
    if (view.getUint32(at, true) === END && at + 22 + view.getUint16(at + 20, true) === view.byteLength) return at;
  }
  throw damaged();
}

function readDirectory(bytes: Uint8Array, view: DataView, start: number, stop: number, count: number): Entry[] {
  const entries: Entry[] = [];
  const names = new Set<string>();
  let at = start;
  for (let i = 0; i < count; i++) {
    if (at + 46 > stop || view.getUint32(at, true) !== DIRECTORY) throw damaged();
    const length = 46 + view.getUint16(at + 28, true) + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (at + length > stop) throw damaged();
    const entry = readEntry(bytes, view, at, length, start);
    if (names.has(entry.name.toLowerCase())) throw new FileFault(`The file holds its part ${shown(entry.name)} twice.`);
    names.add(entry.name.toLowerCase());
    entries.push(entry);
    at += length;
  }
  return entries;
}

function readEntry(bytes: Uint8Array, view: DataView, at: number, length: number, directory: number): Entry {
  const name = new TextDecoder().decode(bytes.subarray(at + 46, at + 46 + view.getUint16(at + 28, true)));
  if (view.getUint16(at + 8, true) & 1) throw new FileFault("The file is encrypted; save it without a password first.");
  const method = view.getUint16(at + 10, true);
  if (method !== 0 && method !== 8)
    throw new FileFault(`The file's part ${shown(name)} is packed in a way that is not read.`);
  const packedSize = view.getUint32(at + 20, true);
  const offset = view.getUint32(at + 42, true);
  if (offset + 30 > directory || view.getUint32(offset, true) !== LOCAL) throw damaged();
  const begin = offset + 30 + view.getUint16(offset + 26, true) + view.getUint16(offset + 28, true);
  if (begin + packedSize > directory) throw damaged();
  return {
    name,
    header: bytes.subarray(at, at + length),
    raw: bytes.subarray(offset, begin + packedSize),
    offset,
    method,
    crc: view.getUint32(at + 16, true),
    packed: bytes.subarray(begin, begin + packedSize),
    size: view.getUint32(at + 24, true),
  };
}

/** An entry's bytes go on to the next entry, so that what follows its data (a descriptor) stays with it. */
function setRaw(entries: Entry[], bytes: Uint8Array, directory: number): void {
  const ordered = [...entries].sort((a, b) => a.offset - b.offset);
  ordered.forEach((entry, i) => {
    const next = ordered[i + 1]?.offset ?? directory;
    if (entry.offset + entry.raw.length > next) throw new FileFault("The file is damaged: two of its parts overlap.");
    entry.raw = bytes.subarray(entry.offset, next);
  });
}

function checkSizes(entries: Entry[]): void {
  let total = 0;
  for (const { name, size, packed } of entries) {
    total += size;
    const bomb =
      size > LIMITS.entrySize || total > LIMITS.totalSize || (size > 1_000_000 && size > packed.length * LIMITS.ratio);
    if (bomb)
      throw new FileFault(
        `The file unpacks to too much: its part ${shown(name)} says ${size} bytes out of ${packed.length}.`,
      );
  }
}

function damaged(): FileFault {
  return new FileFault("The file is no workbook, or it is damaged or cut short.");
}
