import { readdirSync, readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { join } from "node:path";
import type { BundledPackage } from "./bundled-packages";

/**
 * The license of a package in full, with its notices: as its files have it, else as its README quotes it, else the
 * standard text, in its author's name.
 */
export function licenseText(bundled: BundledPackage): string {
  return fromFiles(bundled.folder) ?? fromReadme(bundled.folder) ?? standard(bundled);
}

function fromFiles(folder: string): string | undefined {
  const names = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && LEGAL_FILE.test(entry.name))
    .map(({ name }) => name)
    .sort();
  if (!names.some((name) => LICENSE_FILE.test(name))) return undefined;
  return names.map((name) => readFileSync(join(folder, name), "utf8").trim()).join("\n\n");
}

const LICENSE_FILE = /^(licen[cs]e|copying)/i;
const LEGAL_FILE = /^(licen[cs]e|copying|notice|third.?party|copyright)/i;

/** What stands under the heading “License”, unless it is but a name and a link. */
function fromReadme(folder: string): string | undefined {
  const name = readdirSync(folder).find((file) => /^readme(\.md)?$/i.test(file));
  const section =
    name && /^#+ *licen[cs]e *\n(.*?)(?=^#|(?![^]))/ims.exec(readFileSync(join(folder, name), "utf8"))?.[1];
  return section && /without warrant|as is/i.test(section) ? section : undefined;
}

/** Of the licenses that packages without a text have; another one has to be looked at first. */
function standard({ name, version, license, author }: BundledPackage): string {
  if (!author || !license || !["MIT", "ISC", "Apache-2.0"].includes(license)) {
    throw new Error(`${name} ${version} is bundled, and the text of its license is not to be had.`);
  }
  const { licenseText: text } = createRequire(import.meta.url)(`spdx-license-list/licenses/${license}.json`);
  return `Copyright (c) ${author}\n\n${withoutHolders(text).trim()}`;
}

/** The standard text of MIT has a blank for the holder's name, that of ISC its first holder's. */
const withoutHolders = (text: string): string =>
  text.replaceAll(/^Copyright \(c\) .*\n/gm, "").replaceAll(/\bISC (?=DISCLAIMS|BE LIABLE)/g, "THE AUTHOR ");
