import type { Archive, Entry } from "./zip";
import { DIRECTORY, LOCAL } from "./zip-signatures";

/** An empty entry for the end of an archive; its data are put in when the archive is written. */
export function newEntry(name: string, archive: Archive): Entry {
  const bytes = new TextEncoder().encode(name);
  const raw = new Uint8Array(30 + bytes.length);
  raw.set(bytes, 30);
  setFields(new DataView(raw.buffer), [LOCAL, 4, bytes.length]);
  const header = new Uint8Array(46 + bytes.length);
  header.set(bytes, 46);
  const view = new DataView(header.buffer);
  setFields(view, [DIRECTORY, 6, bytes.length]);
  view.setUint16(4, VERSION, true);
  const last = archive.entries.reduce((end, entry) => Math.max(end, entry.offset + entry.raw.length), 0);
  return { name, header, raw, offset: last, method: 8, crc: 0, packed: new Uint8Array(), size: 0 };
}

/** What is needed to unpack it. */
const VERSION = 20;
/** Names are UTF-8. */
const UTF8 = 1 << 11;
/** 1 January 1980, the first day that an archive can write; one file's edits give one and the same file. */
const FIRST_DAY = 0x0021;

/** The fields that both records of an entry have; in the directory they stand two bytes later. */
function setFields(view: DataView, [signature, at, nameLength]: [number, number, number]): void {
  view.setUint32(0, signature, true);
  view.setUint16(at, VERSION, true);
  view.setUint16(at + 2, UTF8, true);
  view.setUint16(at + 4, 8, true);
  view.setUint16(at + 8, FIRST_DAY, true);
  view.setUint16(at + 22, nameLength, true);
}
