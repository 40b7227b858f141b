import { readFileSync } from "node:fs";
import { join, resolve, sep } from "node:path";

export interface BundledPackage {
  name: string;
  version: string;
  /** By its SPDX name; a few packages say so in their license file alone. */
  license: string | undefined;
  author: string | undefined;
  folder: string;
}

/** The packages that files stand in, once each, by name; files of our own stand in none. */
export function packagesOf(files: Iterable<string>): BundledPackage[] {
  const folders = new Set([...files].flatMap((file) => packageFolder(resolve(file)) ?? []));
  return [...folders]
    .map(read)
    .sort((a, b) => (a.name < b.name || (a.name === b.name && a.version < b.version) ? -1 : 1));
}

/** The folder right below the last node_modules, or below its scope. */
function packageFolder(file: string): string | undefined {
  const parts = file.split(sep);
  const at = parts.lastIndexOf("node_modules");
  if (at < 0) return undefined;
  return parts.slice(0, at + (parts[at + 1]!.startsWith("@") ? 3 : 2)).join(sep);
}

function read(folder: string): BundledPackage {
  const manifest = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const { name, version, license, author } = manifest;
  return { name, version, license, author: typeof author === "object" ? author.name : author, folder };
}
