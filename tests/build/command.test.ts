import { spawnSync } from "node:child_process";
import { cpSync, existsSync, mkdtempSync, readFileSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { COMPILED, ENTRY, ofStamped, SCRIPT, stamped } from "../../src/build/command/compiled";
import { compileCommand, writeCommand } from "../../src/build/command/write";
import { cellOf, oneSheet } from "../workbook/support/handmade";
import { partsBenchDraft, partsBenchFile } from "../workbook/support/parts-bench";

let folder: string;
let built: string;
let command: string;
let input: string;
let worked: Uint8Array;
beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "compiled-"));
  built = join(folder, "built");
  await writeCommand(built);
  command = join(folder, "command");
  input = join(folder, "in.xlsx");
  writeFileSync(input, partsBenchDraft());
  worked = partsBenchFile();
});
afterAll(() => rmSync(folder, { recursive: true }));
beforeEach(() => cpSync(built, command, { recursive: true, force: true }));

/** What the command says of the example; what it writes must be right. */
function said(flags: string[] = [], entry = join(command, ENTRY)): string {
  const output = join(folder, "out.xlsx");
  rmSync(output, { force: true });
  const { status, stdout, stderr } = spawnSync(process.execPath, [...flags, entry, input, "-o", output]);
  expect([status, stderr.toString()]).toEqual([0, ""]);
  expect(Buffer.compare(readFileSync(output), worked)).toBe(0);
  return stdout.toString();
}

const read = (name: string): Buffer => readFileSync(join(command, name));
const compile = (bytes: Uint8Array): void => writeFileSync(join(command, COMPILED), bytes);

/** What is compiled of the script once its summary has another word, as long as its own. */
function compiledOther(): { script: Buffer; compiled: Uint8Array } {
  const [script, compiled] = [join(folder, "other.cjs"), join(folder, "other.compiled")];
  writeFileSync(script, read(SCRIPT).toString().replaceAll(" recalculated,", " worked anew!,"));
  compileCommand(script, compiled);
  return { script: readFileSync(script), compiled: readFileSync(compiled) };
}

describe("what is compiled of the command when it is built", () => {
  const SAID = /^\d+ formulas recalculated, \d+ cells changed\.\n$/;

  test("is what runs, where the stamp says that this Node made it of this script", () => {
    const { script, compiled } = compiledOther();
    compile(stamped(read(SCRIPT), ofStamped(script, compiled)!)!);
    expect(said()).toMatch(/^\d+ formulas worked anew!, /);
  });

  test("is not what runs, where it was made of another script", () => {
    compile(compiledOther().compiled);
    expect(said()).toMatch(SAID);
  });

  test("holds no path of the machine that built it", () => {
    for (const path of [process.cwd(), tmpdir(), built]) {
      expect(read(COMPILED).includes(path)).toBe(false);
      expect(read(COMPILED).includes(Buffer.from(path, "utf16le"))).toBe(false);
    }
  });

  test.each<[string, () => void]>([
    ["missing", () => rmSync(join(command, COMPILED))],
    ["empty", () => compile(new Uint8Array())],
    ["shorter than a stamp", () => compile(read(COMPILED).subarray(0, 7))],
    ["a stamp alone", () => compile(read(COMPILED).subarray(0, 8))],
    ["cut off", () => compile(read(COMPILED).subarray(0, 1_000_000))],
    ["longer", () => compile(Buffer.concat([read(COMPILED), Buffer.alloc(8)]))],
    ["garbled in the stamp", () => compile(garbled(0))],
    ["garbled at its begin", () => compile(garbled(8))],
    ["garbled in the middle", () => compile(garbled(read(COMPILED).length >> 1))],
    ["garbled at its end", () => compile(garbled(read(COMPILED).length - 1))],
    ["stamped, and nothing that V8 made", () => compile(stamped(read(SCRIPT), Buffer.alloc(1_000))!)],
  ])("changes nothing but time where it is %s", (_, spoil) => {
    spoil();
    expect(said()).toMatch(SAID);
  });

  test("is not what runs, where a letter has changed in it", () => {
    const at = read(COMPILED).indexOf(" recalculated, ");
    expect(at).toBeGreaterThan(0);
    compile(garbled(at + 1));
    expect(said()).toMatch(SAID);
  });

  const garbled = (at: number): Buffer => {
    const bytes = read(COMPILED);
    bytes[at]! ^= 0x55;
    return bytes;
  };

  test.each(["compiled", "as text"])("reads every letter as it was written: %s", (how) => {
    if (how === "as text") rmSync(join(command, COMPILED));
    const [book, output] = [join(folder, "letters.xlsx"), join(folder, "letters-out.xlsx")];
    writeFileSync(book, oneSheet('<row r="1"><c r="A1"><f>DRAWER.LENGTH("24½″","in")</f><v>0</v></c></row>'));
    expect(spawnSync(process.execPath, [join(command, ENTRY), book, "-o", output]).status).toBe(0);
    expect(cellOf(readFileSync(output), "A1")).toMatch(/<v>24\.5<\/v>/);
  });

  test("changes nothing but time where V8 refuses it, as under other flags", () => {
    expect(said(["--no-opt"])).toMatch(SAID);
  });

  test("is found beside what a link leads to, and is never written where the command runs", () => {
    const link = join(folder, "recalculate");
    symlinkSync(join(command, ENTRY), link);
    rmSync(join(command, COMPILED));
    expect(said([], link)).toMatch(SAID);
    expect(existsSync(join(command, COMPILED))).toBe(false);
  });
});
