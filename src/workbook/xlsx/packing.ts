import { deflateSync, Inflate, inflateSync } from "fflate";
import { crcOf } from "./crc";

/** How an archive's entries are packed, and their checksum. */
export interface Packing {
  /**
   * @param most bytes that may come of it; once there are more it need not go on
   * @returns what it unpacks to, or some bytes more than `most`
   * @throws where it does not unpack
   */
  unpack(packed: Uint8Array, most: number): Uint8Array;
  pack(data: Uint8Array): Uint8Array;
  crc32(data: Uint8Array): number;
}

/** Level 6 takes twice as long for a hundredth less. */
export const LEVEL = 5;

/** The way that works everywhere. */
const script: Packing = {
  unpack: (packed, most) =>
    packed.length > 0 && packed.length <= STEP ? unpackAtOnce(packed, most) : unpackInSteps(packed, most),
  pack: (data) => deflateSync(data, { level: LEVEL }),
  crc32: crcOf,
};

let current = script;

/** A program that runs where packing is built in gives that way, which is quicker; none is the way that works everywhere. */
export function packBy(packing: Packing = script): void {
  current = packing;
}

export const packing = (): Packing => current;

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
