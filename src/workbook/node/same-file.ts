import { stat } from "node:fs/promises";

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
