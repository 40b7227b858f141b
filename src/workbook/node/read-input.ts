import { open, stat, type FileHandle } from "node:fs/promises";
import { FileFault } from "../xlsx/fault";
import { kindOf } from "./kind";
import { reason } from "./reason";

/** Files larger than this are refused before they are read. */
const LARGEST_FILE = 256 * 1024 * 1024;

/**
 * Reads a file whole. Devices, pipes and folders are refused before they are opened, for opening may wait for ever;
 * so are files that say they are empty, as those do that the system makes while they are read.
 * @throws FileFault in words
 */
export async function readInput(path: string): Promise<Uint8Array> {
  try {
    const found = await stat(path);
    if (!found.isFile()) throw new FileFault(`${path} is no file but ${kindOf(found)}.`);
    if (found.size === 0) throw new FileFault(`${path} is empty.`);
    if (found.size > LARGEST_FILE) throw new FileFault(`${path} is larger than ${LARGEST_FILE / 1024 / 1024} MB.`);
    const file = await open(path, "r");
    return await readAll(file, path, found.size).finally(() => file.close());
  } catch (error) {
    if (error instanceof FileFault) throw error;
    const { code } = error as NodeJS.ErrnoException;
    throw new FileFault(code === "ENOENT" ? `${path} is not there.` : `${path} cannot be read: ${reason(error)}.`);
  }
}

/** Not a byte beyond the size that was found, whatever is added meanwhile. */
async function readAll(file: FileHandle, path: string, size: number): Promise<Uint8Array> {
  const bytes = new Uint8Array(size);
  let read = 0;
  while (read < size) {
    const { bytesRead } = await file.read(bytes, read, size - read, read);
    if (bytesRead === 0) throw new FileFault(`${path} became shorter while it was read.`);
    read += bytesRead;
  }
  return bytes;
}
