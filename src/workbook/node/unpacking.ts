import * as zlib from "node:zlib";
import { crcOf } from "../xlsx/crc";
import type { Unpacking } from "../xlsx/unpacking";

/** Unpacking as it is built into Node. */
export const nodeUnpacking: Unpacking = {
  unpack(packed, most) {
    if (packed.length === 0) return new Uint8Array();
    try {
      return plain(
        zlib.inflateRawSync(packed, { maxOutputLength: most + 1, chunkSize: Math.min(Math.max(most + 1, 64), CHUNK) }),
      );
    } catch (error) {
      if ((error as NodeJS.ErrnoException).code === "ERR_BUFFER_TOO_LARGE") return new Uint8Array(most + 1);
      throw error;
    }
  },
  // Built in from Node 20.15 on.
  crc32: zlib.crc32 ?? crcOf,
};

/** Bytes that are unpacked before more room is made. */
const CHUNK = 16 * 1024 * 1024;

/** Slices of a Buffer share its bytes where those of a plain array are copies. */
const plain = ({ buffer, byteOffset, byteLength }: Buffer): Uint8Array =>
  new Uint8Array(buffer, byteOffset, byteLength);
