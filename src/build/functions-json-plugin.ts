import { readFileSync } from "node:fs";
import type { Compilation, Compiler } from "webpack";
import { readFunctionDocs } from "./function-doc";
import { tidyMetadata } from "./metadata";
import { validateDoc } from "./validate-doc";

/**
 * Fails the build where a cell function's doc comment lacks a part or its metadata would mislead the host, and mends
 * the functions.json that the metadata generator wrote.
 */
export class FunctionsJsonPlugin {
  /**
   * @param files the files that hold a cell function each
   * @param help the public address of a function's help, by its name
   */
  constructor(
    private readonly files: readonly string[],
    private readonly help: (name: string) => string,
  ) {}

  apply(compiler: Compiler): void {
    const { Compilation: stages, WebpackError, sources } = compiler.webpack;
    const tap = { name: "FunctionsJsonPlugin", stage: stages.PROCESS_ASSETS_STAGE_OPTIMIZE };
    compiler.hooks.thisCompilation.tap(tap.name, (compilation) => {
      compilation.hooks.processAssets.tap(tap, () => {
        const fail = (problem: string) => compilation.errors.push(new WebpackError(problem));
        docProblems(this.files).forEach(fail);
        mend(compilation, this.help, fail, (text) => new sources.RawSource(text));
      });
    });
  }
}

type Source = Parameters<Compilation["updateAsset"]>[1];

/** Where the generator itself failed, it wrote no file, and has said why. */
function mend(
  compilation: Compilation,
  help: (name: string) => string,
  fail: (problem: string) => void,
  source: (text: string) => Source,
): void {
  const asset = compilation.getAsset("functions.json");
  if (!asset) return;
  const { metadata, problems } = tidyMetadata(JSON.parse(asset.source.source().toString()), help);
  problems.forEach(fail);
  compilation.updateAsset("functions.json", source(JSON.stringify(metadata)));
}

/** What the doc comments of all files lack; a file without a cell function lacks everything. */
export const docProblems = (files: readonly string[]): string[] =>
  files.flatMap((file) => {
    const docs = readFunctionDocs(readFileSync(file, "utf8"), file);
    return docs.length > 0 ? docs.flatMap(validateDoc) : [`${file}: holds no function marked @customfunction`];
  });
