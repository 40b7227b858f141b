import type { Compiler } from "webpack";
import { guideFiles, guideFolder } from "./files";

/** Puts the guide's pages beside the add-in. */
export class GuidePlugin {
  apply(compiler: Compiler): void {
    const { Compilation, sources } = compiler.webpack;
    const tap = { name: "GuidePlugin", stage: Compilation.PROCESS_ASSETS_STAGE_ADDITIONAL };
    compiler.hooks.thisCompilation.tap(tap.name, (compilation) => {
      compilation.contextDependencies.add(guideFolder());
      compilation.hooks.processAssets.tap(tap, () => {
        // As they are written: they are small, and a minifier knows no page's text from its markup's blanks.
        for (const [name, bytes] of guideFiles())
          compilation.emitAsset(name, new sources.RawSource(bytes), { minimized: true });
      });
    });
  }
}
