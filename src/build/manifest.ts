import { fill } from "./fill";

/**
 * Fills the manifest's template.
 * @param origin the public address, with a slash at its end
 * @param version major.minor.patch; hosts keep functions.json for a day unless the manifest's version rises
 */
export const fillManifest = (template: string, origin: string, version: string): string =>
  fill(template, { origin, version: `${version}.0` });
