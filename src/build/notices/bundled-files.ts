import type { Metafile } from "esbuild";

/** The files of which esbuild put at least a byte into its outputs. */
export const bundledFiles = ({ outputs }: Metafile): string[] =>
  Object.values(outputs).flatMap(({ inputs }) =>
    Object.entries(inputs)
      .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
      // What a plugin has changed stands behind the name of that change.
      .map(([file]) => file.replace(/^[a-z]{2,}:/, "")),
  );
