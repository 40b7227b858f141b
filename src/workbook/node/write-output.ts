import { randomBytes } from "node:crypto";
import fs, { closeSync, constants, fchmodSync, fchownSync, fstatSync, openSync, rmSync, type Stats } from "node:fs";
import { access, lstat, open, realpath, rename, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";
import { promisify } from "node:util";
import { FileFault } from "../xlsx/fault";
import { kindOf } from "./kind";
import { reason } from "./reason";
import { whileRemovedOnSignal } from "./signals";

/**
 * Writes a file in one step: into a new file beside it, down to the disk, then renamed over it. Whoever reads it
 * meanwhile sees the old file or the new one, and whatever interrupts it leaves the old one whole. A symbolic link
 * stays a link, and the file that it leads to is written; mode and owner of a file stay.
 * @throws FileFault in words
 */
export async function writeOutput(path: string, bytes: Uint8Array): Promise<void> {
  const { target, old } = await outputTarget(path);
  const temporary = join(dirname(target), `.${basename(target).slice(0, 80)}.${randomBytes(6).toString("hex")}.tmp`);
  try {
    await whileRemovedOnSignal(temporary, async () => {
      const file = create(temporary, old);
      try {
        await writeAll(file, bytes);
        await fsync(file);
      } finally {
        closeSync(file);
      }
      await rename(temporary, target);
    });
  } catch (error) {
    rmSync(temporary, { force: true });
    throw cannotBeWritten(path, error);
  }
  await syncFolder(dirname(target));
}

/**
 * Where a path leads to, and the file that stands there, if one does.
 * @throws FileFault where it is no regular file, and may not be replaced by one
 */
export async function outputTarget(path: string): Promise<{ target: string; old?: Stats }> {
  try {
    if (!(await found(lstat(path)))) return { target: path };
    const old = await found(stat(path));
    if (!old) throw new FileFault(`${path} is a link that leads nowhere; nothing is written in its place.`);
    if (!old.isFile()) throw new FileFault(`${path} is no file but ${kindOf(old)}; nothing is written in its place.`);
    await access(path, constants.W_OK);
    return { target: await realpath(path), old };
  } catch (error) {
    throw cannotBeWritten(path, error);
  }
}

const found = (asked: Promise<Stats>): Promise<Stats | undefined> =>
  asked.catch((error: NodeJS.ErrnoException) => {
    if (error.code === "ENOENT") return undefined;
    throw error;
  });

const cannotBeWritten = (path: string, error: unknown): FileFault =>
  error instanceof FileFault ? error : new FileFault(`${path} cannot be written: ${reason(error)}.`);

/** Made in one go, so that no signal comes between; the owner first, for a new owner takes bits off the mode. */
function create(temporary: string, old: Stats | undefined): number {
  const file = openSync(temporary, "wx", old ? 0o600 : 0o666);
  try {
    if (!old) return file;
    const { uid, gid } = fstatSync(file);
    if (uid !== old.uid || gid !== old.gid) fchownSync(file, old.uid, old.gid);
    fchmodSync(file, old.mode & 0o7777);
    return file;
  } catch (error) {
    closeSync(file);
    throw error;
  }
}

const fsync = promisify(fs.fsync);
const write = promisify(fs.write);

async function writeAll(file: number, bytes: Uint8Array): Promise<void> {
  for (let at = 0; at < bytes.length;) {
    at += (await write(file, bytes, at, bytes.length - at, at)).bytesWritten;
  }
}

/** Makes the rename itself last; not every system can open a folder. */
async function syncFolder(folder: string): Promise<void> {
  try {
    const handle = await open(folder, "r");
    await handle.sync().finally(() => handle.close());
  } catch {
    return;
  }
}
