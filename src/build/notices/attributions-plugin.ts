import { createRequire } from "node:module";
import type { Compilation, Compiler, Module } from "webpack";
import { attributions } from "./attributions";
import { ATTRIBUTIONS, banner } from "./banner";

/** Writes the notices of what webpack put into its bundles, and says in each bundle where they stand. */
export class AttributionsPlugin {
  /** @param version ours, for the banner */
  constructor(private readonly version: string) {}

  apply(compiler: Compiler): void {
    const { BannerPlugin, Compilation: stages, WebpackError, sources } = compiler.webpack;
    const stage = stages.PROCESS_ASSETS_STAGE_REPORT;
    new BannerPlugin({ banner: banner(this.version), raw: true, entryOnly: true, stage }).apply(compiler);
    compiler.hooks.thisCompilation.tap(NAME, (compilation) => {
      compilation.hooks.processAssets.tap({ name: NAME, stage }, () => {
        try {
          const text = attributions("The add-in", bundledFiles(compilation));
          compilation.emitAsset(ATTRIBUTIONS, new sources.RawSource(text));
        } catch (error) {
          compilation.errors.push(new WebpackError((error as Error).message));
        }
      });
    });
  }
}

const NAME = "AttributionsPlugin";

/** What is in the chunks; where webpack put code of its own in, so does its own package. */
function bundledFiles({ chunks, chunkGraph }: Compilation): string[] {
  const files = [...chunks].flatMap((chunk) => [...chunkGraph.getChunkModulesIterable(chunk)].flatMap(filesOf));
  const ownCode = [...chunks].some((chunk) => [...chunkGraph.getChunkRuntimeModulesIterable(chunk)].length > 0);
  return ownCode ? [...files, createRequire(import.meta.url).resolve("webpack")] : files;
}

/** Webpack may have joined several modules into one. */
function filesOf(module: Module): string[] {
  const { modules, resource } = module as { modules?: Module[]; resource?: string };
  return modules?.flatMap(filesOf) ?? (resource ? [resource.split("?")[0]!] : []);
}
