import { randomBytes } from "node:crypto";
import { open, realpath, rename, rm, stat } from "node:fs/promises";
import { basename, dirname, join } from "node:path";

/** Whether two paths lead to one file, through links of either kind too. A file that is not there is no other's. */
export async function isSameFile(a: string, b: string): Promise<boolean> {
  const [first, second] = await Promise.all([identity(a), identity(b)]);
  return first !== undefined && first === second;
}

async function identity(path: string): Promise<string | undefined> {
  try {
    const { dev, ino } = await stat(path, { bigint: true });
    return `${dev} ${ino}`;
  } catch {
    return undefined;
  }
}

/**
 * Writes a file in one step: into a new file beside it, down to the disk, then renamed over it.
 * Whoever reads it meanwhile sees the old file or the new one. A link stays a link.
 */
export async function writeAtomically(path: string, bytes: Uint8Array): Promise<void> {
  const target = await realpath(path).catch(() => path);
  const mode = await stat(target).then(
    (found) => found.mode & 0o777,
    () => 0o666,
  );
  const temporary = join(dirname(target), `.${basename(target)}.${randomBytes(6).toString("hex")}.tmp`);
  try {
    const file = await open(temporary, "wx", mode);
    try {
      await file.writeFile(bytes);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(temporary, target);
  } catch (error) {
    await rm(temporary, { force: true });
    throw error;
  }
  await syncFolder(dirname(target));
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
