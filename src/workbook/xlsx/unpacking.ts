import { Inflate, inflateSync } from "fflate";
import { crcOf } from "./crc";

/** How an archive's entries are unpacked, and their checksum. They are packed in one way, so that a file comes out the same everywhere. */
export interface Unpacking {
  /**
   * @param most bytes that may come of it; once there are more it need not go on
   * @returns what it unpacks to, or some bytes more than `most`
   * @throws where it does not unpack
   */
  unpack(packed: Uint8Array, most: number): Uint8Array;
  crc32(data: Uint8Array): number;
}

/** The way that works everywhere. */
const script: Unpacking = {
  unpack: (packed, most) =>
    packed.length > 0 && packed.length <= STEP ? unpackAtOnce(packed, most) : unpackInSteps(packed, most),
  crc32: crcOf,
};

let current = script;

/** A program that runs where unpacking is built in gives that way, which is quicker; none is the way that works everywhere. */
export function unpackBy(unpacking: Unpacking = script): void {
  current = unpacking;
}

export const unpacking = (): Unpacking => current;

/** Most parts are small, and stopping on the way takes longer than unpacking them whole, to a byte more than they may. */
const unpackAtOnce = (packed: Uint8Array, most: number): Uint8Array =>
  inflateSync(packed, { out: new Uint8Array(most + 1) });

function unpackInSteps(packed: Uint8Array, most: number): Uint8Array {
  const data = new Uint8Array(most + 1);
  let length = 0;
  const inflater = new Inflate((chunk) => {
    data.set(chunk.subarray(0, data.length - length), length);
    length = Math.min(data.length, length + chunk.length);
  });
  for (let at = 0; (at < packed.length || at === 0) && length <= most; at += STEP)
    inflater.push(packed.subarray(at, at + STEP), at + STEP >= packed.length);
  return data.subarray(0, length);
}

/** Packed bytes that are unpacked before it is looked how much came of them. */
const STEP = 64 * 1024;
