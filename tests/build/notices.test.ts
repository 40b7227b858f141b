import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { build, type Metafile } from "esbuild";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildCommand, bundleScript } from "../../src/build/command/build";
import { attributions } from "../../src/build/notices";
import { buildPage, bundlePage } from "../../src/build/page/build";
import { dist } from "./dist";

/** The packages that a metafile says are in the bundle, found by another way than the build's. */
const bundled = ({ outputs }: Metafile): string[] => {
  const inputs = Object.values(outputs).flatMap((output) => Object.entries(output.inputs));
  const names = inputs.flatMap(([file, { bytesInOutput }]) =>
    bytesInOutput > 0 ? (/.*node_modules\/((@[^/]+\/)?[^/]+)/.exec(file)?.[1] ?? []) : [],
  );
  return [...new Set(names)].sort();
};

/** The packages whose license a file of notices gives, each in full. */
function noticed(text: string): string[] {
  const entries = text.split(`\n${"-".repeat(80)}\n\n`).slice(1);
  return entries.map((entry) => {
    const [, name, license] = /^(\S+) \d+\.\d+\.\d+\S*\nLicense: (.+)\n\n/.exec(entry) ?? [];
    expect(license, entry).toBeTruthy();
    expect(entry, name).toMatch(/without warrant|as is/i);
    return name!;
  });
}

describe("the notices of what is bundled", () => {
  let built: string;
  beforeAll(() => void (built = dist()));

  test("the add-in's are of the packages that another bundler finds in it too, and functions.js leads to them", async () => {
    const { metafile } = await build({
      entryPoints: ["src/functions/index.ts", "src/taskpane/index.ts"],
      bundle: true,
      write: false,
      metafile: true,
      outdir: "/",
    });
    const names = noticed(readFileSync(join(built, "ATTRIBUTIONS.txt"), "utf8"));
    expect(names).toEqual(bundled(metafile));
    for (const file of ["functions.js", "taskpane.js"]) {
      expect(readFileSync(join(built, file), "utf8").split("\n")[0]).toMatch(/^\/\*! .*ATTRIBUTIONS\.txt \*\/$/);
    }
  });

  test("the page's are of all that esbuild put into its scripts and styles", async () => {
    const served = (await buildPage()).get("ATTRIBUTIONS.txt")!;
    expect(served.type).toMatch(/^text\/plain/);
    const names = noticed(new TextDecoder().decode(served.bytes));
    expect(names).toEqual(bundled((await bundlePage()).metafile));
    expect(names).toContain("@univerjs/sheets-ui");
  });

  test("the command's are of all that esbuild put into it", async () => {
    const names = noticed((await buildCommand()).get("ATTRIBUTIONS.txt")!);
    expect(names).toEqual(bundled((await bundleScript()).metafile));
    expect(names).toContain("saxes");
  });
});

describe("the license of a package", () => {
  let root: string;
  beforeAll(() => {
    root = mkdtempSync(join(tmpdir(), "notices-"));
    put("filed", { license: "MIT" }, { LICENCE: "Do as you like. AS IS.", "NOTICE.txt": "Made by B." });
    put("quoted", { license: "ISC" }, { "README.md": "# It\n\n## License\n\nIt comes as is.\n\n## More\n\nno" });
    put("named", { license: "MIT", author: { name: "Ada" } }, { "README.md": "## License\n[MIT](https://a.example)" });
    put("@scope/own", { license: "SEE LICENSE", author: "Ada" }, {});
    put("nameless", { license: "MIT" }, {});
    put("silent", { author: "Ada" }, {});
  });
  afterAll(() => rmSync(root, { recursive: true }));

  function put(name: string, manifest: object, files: Record<string, string>): void {
    const all = { "package.json": JSON.stringify({ name, version: "1.0.0", ...manifest }), "lib/a.js": "", ...files };
    for (const [file, text] of Object.entries(all)) {
      mkdirSync(dirname(join(root, "node_modules", name, file)), { recursive: true });
      writeFileSync(join(root, "node_modules", name, file), text);
    }
  }
  const of = (name: string) => attributions("It", [join(root, "node_modules", name, "lib/a.js")]);

  test("is in its files, with its notices", () => {
    expect(of("filed")).toMatch(/filed 1\.0\.0\nLicense: MIT\n\nDo as you like\. AS IS\.\n\nMade by B\.\n$/);
  });

  test("is else in its README, up to the next heading", () => {
    expect(of("quoted")).toMatch(/License: ISC\n\nIt comes as is\.\n$/);
  });

  test("is else the standard text in its author's name", () => {
    expect(of("named")).toMatch(/License: MIT\n\nCopyright \(c\) Ada\n\n.*Permission is hereby granted/s);
  });

  test.each(["@scope/own", "nameless", "silent"])("that cannot be given stops the build: %s", (name) => {
    expect(() => of(name)).toThrow(`${name} 1.0.0 is bundled, and the text of its license is not to be had.`);
  });

  test("is none where all is ours", () => {
    expect(attributions("It", [join(root, "ours.ts")])).toBe("It of Groove & Reveal includes no packages of others.\n");
  });

  test("is given once, however many files of a package are bundled, and files of ours need none", () => {
    const file = (name: string) => join(root, "node_modules/filed/lib", name);
    expect(noticed(attributions("It", [file("a.js"), file("b.js"), join(root, "ours.ts")]))).toEqual(["filed"]);
  });
});
