import { spawnSync } from "node:child_process";
import {
  chmodSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { run } from "../../../src/workbook/node/cli";
import { fakes } from "../support/fakes";
import { cellOf, oneSheet, parts } from "../support/handmade";

let folder: string;
beforeEach(() => void (folder = mkdtempSync(join(tmpdir(), "recalculate-"))));
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const good = oneSheet(
  '<row r="1"><c r="A1"><v>20</v></c><c r="B1" cm="1"><f t="array" ref="B1">_xldudf_DRAWER_BOXWIDTH(A1)</f><v>0</v></c></row>',
);

function put(name: string, bytes: Uint8Array | string = good): string {
  writeFileSync(join(folder, name), bytes);
  return join(folder, name);
}

async function command(...words: string[]) {
  const out: string[] = [];
  const err: string[] = [];
  const code = await run(words, { functions: fakes }, { out: (line) => out.push(line), err: (line) => err.push(line) });
  return { code, out, err };
}

describe("recalculate --values", () => {
  const dated = async (...words: string[]) => {
    const out: string[] = [];
    const err: string[] = [];
    const options = { functions: fakes, now: new Date(2026, 4, 4, 23, 59) };
    const code = await run(words, options, { out: (line) => out.push(line), err: (line) => err.push(line) });
    return { code, out, err };
  };

  it("writes values in place of calls, dated by the clock that it is given, and says how many", async () => {
    const { code, out } = await dated("--values", put("in.xlsx"), "-o", join(folder, "out.xlsx"));
    expect({ code, out }).toEqual({
      code: 0,
      out: ["1 formula recalculated, 1 cell changed.", "1 formula is a value now."],
    });
    const written = readFileSync(join(folder, "out.xlsx"));
    expect(cellOf(written, "B1")).toBe('<c r="B1"><v>19</v></c>');
    expect(parts(written)["docProps/custom.xml"]).toContain(">2026-05-04<");
  });

  it("--sheet NAME writes that sheet alone, says which there are where it is not, and wants --values", async () => {
    const out = join(folder, "out.xlsx");
    expect((await dated("--values", "--sheet", "Bench", put("in.xlsx"), "-o", out)).code).toBe(0);
    expect(await dated("--values", "--sheet", "Bend", put("in.xlsx"), "-o", out)).toEqual({
      code: 2,
      out: [],
      err: ["recalculate: The workbook has no sheet “Bend”; it has “Bench”."],
    });
    const { code, err } = await dated("--sheet", "Bench", put("in.xlsx"), "-o", out);
    expect({ code, err }).toEqual({ code: 2, err: ["recalculate: --sheet goes with --values. See --help."] });
  });
});

describe("recalculate IN -o OUT", () => {
  it("writes the new file, leaves the old one, and gives 0", async () => {
    const input = put("in.xlsx");
    const { code, out, err } = await command(input, "-o", join(folder, "out.xlsx"));
    expect({ code, out, err }).toEqual({ code: 0, out: ["1 formula recalculated, 1 cell changed."], err: [] });
    expect(cellOf(readFileSync(join(folder, "out.xlsx")), "B1")).toContain("<v>19</v>");
    expect(Buffer.compare(readFileSync(input), good)).toBe(0);
    expect(readdirSync(folder).sort()).toEqual(["in.xlsx", "out.xlsx"]);
  });

  it("lists errors of custom functions with their messages", async () => {
    const input = put(
      "in.xlsx",
      oneSheet('<row r="1"><c r="A1" cm="1"><f t="array" ref="A1">_xldudf_DRAWER_SLIDELENGTH(4)</f></c></row>'),
    );
    const { code, out } = await command(input, "--output", join(folder, "out.xlsx"));
    expect(code).toBe(0);
    expect(out.at(-1)).toBe("Bench!A1: #N/A No slide is so short.");
  });

  it("gives 1 and lists what kept its value, even when it is quiet", async () => {
    const input = put("in.xlsx", oneSheet('<row r="1"><c r="A1"><f>CUBEVALUE(1)</f><v>5</v></c></row>'));
    const { code, out, err } = await command(input, "-q", "-o", join(folder, "out.xlsx"));
    expect({ code, out, err }).toEqual({
      code: 1,
      out: [],
      err: ["Bench!A1 kept its value: it calls CUBEVALUE, which is not known here."],
    });
    expect(existsSync(join(folder, "out.xlsx"))).toBe(true);
  });

  it("writes over another file in one step, its permissions kept", async () => {
    const output = put("out.xlsx", "something older");
    chmodSync(output, 0o640);
    const before = statSync(output).ino;
    await command(put("in.xlsx"), "-o", output);
    expect(statSync(output).ino).not.toBe(before);
    expect(statSync(output).mode & 0o777).toBe(0o640);
    expect(cellOf(readFileSync(output), "B1")).toContain("<v>19</v>");
  });
});

describe("the input is not written over", () => {
  it.each<[string, (input: string) => string]>([
    ["its own name", (input) => input],
    ["another way to write its name", () => `${folder}/./in.xlsx`],
    ["a symbolic link to it", (input) => (symlinkSync(input, join(folder, "soft.xlsx")), join(folder, "soft.xlsx"))],
    ["a hard link to it", (input) => (linkSync(input, join(folder, "hard.xlsx")), join(folder, "hard.xlsx"))],
  ])("by %s", async (_, name) => {
    const input = put("in.xlsx");
    const { code, err } = await command(input, "-o", name(input));
    expect({ code, err }).toEqual({
      code: 2,
      err: ["recalculate: The output is the input itself; give --in-place to write over it. See --help."],
    });
    expect(Buffer.compare(readFileSync(input), good)).toBe(0);
  });

  it("unless --in-place says so; a link stays a link", async () => {
    const input = put("in.xlsx");
    symlinkSync(input, join(folder, "soft.xlsx"));
    expect((await command("--in-place", join(folder, "soft.xlsx"))).code).toBe(0);
    expect(lstatSync(join(folder, "soft.xlsx")).isSymbolicLink()).toBe(true);
    expect(cellOf(readFileSync(input), "B1")).toContain("<v>19</v>");
  });
});

describe("a command that cannot be followed gives 2, one line, and writes nothing", () => {
  it.each<[string, (input: string) => string[], RegExp]>([
    ["no file", () => [], /Which workbook\?/],
    ["no output", (input) => [input], /Where to\? Give -o FILE, or --in-place\./],
    ["both outputs", (input) => [input, "--in-place", "-o", "x.xlsx"], /not both/],
    ["two files", (input) => [input, "b.xlsx", "-o", "x.xlsx"], /One workbook at a time/],
    ["an unknown option", (input) => [input, "--fast"], /Unknown option '--fast'/],
    [
      "a file that is not there",
      () => [join(folder, "none.xlsx"), "-o", join(folder, "x.xlsx")],
      /none\.xlsx is not there\./,
    ],
    ["a folder", () => [folder, "-o", join(folder, "x.xlsx")], /is no file but a folder\./],
    [
      "a file that is no workbook",
      () => [put("notes.txt", "hello"), "-o", join(folder, "x.xlsx")],
      /The file is no \.xlsx workbook\./,
    ],
    [
      "a folder that is not there to write to",
      (input) => [input, "-o", join(folder, "none", "x.xlsx")],
      /cannot be written: its folder is not there\./,
    ],
  ])("%s", async (_, words, message) => {
    const input = put("in.xlsx");
    const { code, out, err } = await command(...words(input));
    expect(code).toBe(2);
    expect(out).toEqual([]);
    expect(err).toHaveLength(1);
    expect(err[0]).toMatch(message);
    expect(readdirSync(folder).filter((name) => !["in.xlsx", "notes.txt"].includes(name))).toEqual([]);
    expect(Buffer.compare(readFileSync(input), good)).toBe(0);
  });

  it("--help prints the usage and the exit codes, and gives 0", async () => {
    const { code, out } = await command("--help");
    expect(code).toBe(0);
    expect(out.join("\n")).toMatch(/--in-place[\s\S]*Exit code\n {2}0 .*\n {2}1 .*\n {2}2 /);
  });
});

describe("the command itself, with the real functions", () => {
  const start = (...words: string[]) =>
    spawnSync(process.execPath, ["--import", "tsx", "src/workbook/node/recalculate.ts", ...words], {
      encoding: "utf8",
    });

  it("recalculates a file and gives 0", () => {
    const input = put("in.xlsx");
    const { status, stdout, stderr } = start(input, "-o", join(folder, "out.xlsx"));
    expect({ status, stdout, stderr }).toEqual({
      status: 0,
      stdout: "1 formula recalculated, 1 cell changed.\n",
      stderr: "",
    });
    expect(cellOf(readFileSync(join(folder, "out.xlsx")), "B1")).toContain("<v>19</v>");
  });

  it("gives 1 where something kept its value, and 2 where nothing was written", () => {
    const input = put("in.xlsx", oneSheet('<row r="1"><c r="A1"><f>CUBEVALUE(1)</f><v>5</v></c></row>'));
    expect(start(input, "-o", join(folder, "out.xlsx")).status).toBe(1);
    const failed = start(input);
    expect([failed.status, failed.stderr]).toEqual([
      2,
      "recalculate: Where to? Give -o FILE, or --in-place. See --help.\n",
    ]);
  });
});
