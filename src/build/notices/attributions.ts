import { packagesOf, type BundledPackage } from "./bundled-packages";
import { licenseText } from "./license-text";

/**
 * The notices that go with a bundle: every package in it, with its license in full.
 * @param bundle what the bundle is called where the notices stand
 * @param files the files that the bundler put in
 * @throws Error where the text of a license is not to be had
 */
export function attributions(bundle: string, files: Iterable<string>): string {
  const packages = packagesOf(files);
  return [head(bundle, packages.length), ...packages.map(entry)].join(RULE);
}

const head = (bundle: string, packages: number): string =>
  packages === 0
    ? `${bundle} of Groove & Reveal includes no packages of others.\n`
    : `${bundle} of Groove & Reveal includes the packages below. Each stands under its own license, given in full.\n`;

const RULE = `\n${"-".repeat(80)}\n\n`;

function entry(bundled: BundledPackage): string {
  const { name, version, license } = bundled;
  return `${name} ${version}\nLicense: ${license ?? "as its text says"}\n\n${licenseText(bundled).trim()}\n`;
}
