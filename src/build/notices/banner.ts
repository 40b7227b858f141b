/** The file that stands beside every bundle. */
export const ATTRIBUTIONS = "ATTRIBUTIONS.txt";

/** The first line of a bundle; tools that make bundles smaller leave it in. */
export const banner = (version: string): string =>
  `/*! Groove & Reveal ${version}, MIT license. Licenses of others: ${ATTRIBUTIONS} */`;
