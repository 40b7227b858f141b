import { execFileSync, spawn, spawnSync } from "node:child_process";
import {
  chmodSync,
  chownSync,
  existsSync,
  linkSync,
  lstatSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  realpathSync,
  rmSync,
  statSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { writeCommand } from "../../../src/build/command/write";
import { cellOf, handmade, oneSheet, sheetXml } from "../support/handmade";

const good = oneSheet('<row r="1"><c r="A1"><f>20-1</f><v>0</v></c></row>');
const isRoot = process.getuid?.() === 0;

let command: string;
let program: string;
beforeAll(async () => {
  program = mkdtempSync(join(tmpdir(), "command-"));
  chmodSync(program, 0o755);
  command = join(program, "recalculate.mjs");
  await writeCommand(program);
});
afterAll(() => rmSync(program, { recursive: true }));

let folder: string;
let input: string;
beforeEach(() => {
  folder = realpathSync(mkdtempSync(join(tmpdir(), "unusual-")));
  chmodSync(folder, 0o777);
  input = put("in.xlsx", good);
});
afterEach(() => rmSync(folder, { recursive: true, force: true }));

const at = (name: string): string => join(folder, name);
function put(name: string, bytes: Uint8Array | string): string {
  writeFileSync(at(name), bytes);
  return at(name);
}

/** The command in a process of its own, in the folder; what hangs is ended, and has no exit code. */
function run(...words: string[]): { status: number | null; said: string } {
  const { status, stdout, stderr } = spawnSync(process.execPath, [command, ...words], {
    cwd: folder,
    encoding: "utf8",
    timeout: 50_000,
  });
  return { status, said: stdout + stderr };
}

const refused = (sentence: string) => ({ status: 2, said: `recalculate: ${sentence}\n` });

describe("-o writes nothing but regular files", () => {
  test("a device stays a device", ({ skip }) => {
    // One of our own, the null device by its numbers, lest a failing test takes the machine's away.
    if (spawnSync("mknod", [at("null"), "c", "1", "3"]).status !== 0) skip("devices cannot be made here");
    expect(run("in.xlsx", "-o", "null")).toEqual(
      refused("null is no file but a device; nothing is written in its place."),
    );
    expect(statSync(at("null")).isCharacterDevice()).toBe(true);
  });

  test("a pipe stays a pipe", () => {
    execFileSync("mkfifo", [at("pipe")]);
    expect(run("in.xlsx", "-o", "pipe")).toEqual(
      refused("pipe is no file but a pipe; nothing is written in its place."),
    );
    expect(statSync(at("pipe")).isFIFO()).toBe(true);
  });

  test("a folder stays a folder, an empty one too", () => {
    mkdirSync(at("folder"));
    expect(run("in.xlsx", "-o", "folder")).toEqual(
      refused("folder is no file but a folder; nothing is written in its place."),
    );
    expect(statSync(at("folder")).isDirectory()).toBe(true);
  });

  test("a link that leads nowhere stays one", () => {
    symlinkSync("nowhere.xlsx", at("link"));
    expect(run("in.xlsx", "-o", "link")).toEqual(
      refused("link is a link that leads nowhere; nothing is written in its place."),
    );
    expect(existsSync(at("nowhere.xlsx"))).toBe(false);
    expect(lstatSync(at("link")).isSymbolicLink()).toBe(true);
  });

  test("links in a circle are said to be so", () => {
    symlinkSync("b", at("a"));
    symlinkSync("a", at("b"));
    expect(run("in.xlsx", "-o", "a")).toEqual(refused("a cannot be written: its links lead in a circle."));
  });

  test("a link to a file stays a link, and the file is written", () => {
    put("real.xlsx", "older");
    symlinkSync("real.xlsx", at("link"));
    expect(run("in.xlsx", "-o", "link").status).toBe(0);
    expect(lstatSync(at("link")).isSymbolicLink()).toBe(true);
    expect(cellOf(readFileSync(at("real.xlsx")), "A1")).toContain("<v>19</v>");
  });

  test("another hard link to the file keeps the old one", () => {
    put("out.xlsx", "older");
    linkSync(at("out.xlsx"), at("other"));
    expect(run("in.xlsx", "-o", "out.xlsx").status).toBe(0);
    expect(readFileSync(at("other"), "utf8")).toBe("older");
  });
});

describe("a file that is written over keeps", () => {
  test.each([0o600, 0o644, 0o664, 0o666])("its mode %o, whatever the mask", (mode) => {
    chmodSync(put("out.xlsx", "older"), mode);
    expect(run("in.xlsx", "-o", "out.xlsx").status).toBe(0);
    expect(statSync(at("out.xlsx")).mode & 0o7777).toBe(mode);
  });

  test.runIf(isRoot)("its owner and group", () => {
    chownSync(input, 12_345, 23_456);
    expect(run("--in-place", "in.xlsx").status).toBe(0);
    expect(statSync(input)).toMatchObject({ uid: 12_345, gid: 23_456 });
  });

  test.runIf(isRoot)(
    "its content where whoever runs the command may not write it, or may not give it its owner",
    () => {
      const asNobody = () =>
        spawnSync(process.execPath, [command, "in.xlsx", "-o", "out.xlsx"], { cwd: folder, uid: 65_534, gid: 65_534 });
      put("out.xlsx", "older");
      for (const mode of [0o644, 0o666]) {
        chmodSync(at("out.xlsx"), mode);
        const { status, stderr } = asNobody();
        expect({ status, said: stderr.toString() }).toEqual(
          refused("out.xlsx cannot be written: that is not permitted."),
        );
        expect(readFileSync(at("out.xlsx"), "utf8")).toBe("older");
        expect(statSync(at("out.xlsx"))).toMatchObject({ uid: 0, mode: 0o100_000 + mode });
      }
      expect(readdirSync(folder).sort()).toEqual(["in.xlsx", "out.xlsx"]);
    },
  );
});

describe("a write that is broken off leaves the old file whole and nothing beside it:", () => {
  test("by a file that becomes too large, as by a full disk", () => {
    const large = put("in.xlsx", oneSheet(`<row r="1"><c r="A1"><f>1</f></c></row><!--${noise(400_000)}-->`));
    put("out.xlsx", "older");
    const limited = spawnSync("sh", [
      "-c",
      `ulimit -f 100; exec "$0" "$@"`,
      process.execPath,
      command,
      large,
      "-o",
      at("out.xlsx"),
    ]);
    expect({ status: limited.status, said: limited.stderr.toString() }).toEqual(
      refused(`${at("out.xlsx")} cannot be written: it would become too large.`),
    );
    expect(readFileSync(at("out.xlsx"), "utf8")).toBe("older");
    expect(readdirSync(folder).sort()).toEqual(["in.xlsx", "out.xlsx"]);
  });

  test.each(["SIGINT", "SIGTERM", "SIGHUP"] as const)("by %s", async (signal) => {
    put("out.xlsx", "older");
    const script = `import { writeOutput } from ${JSON.stringify(join(process.cwd(), "src/workbook/node/write-output.ts"))};
      await writeOutput(${JSON.stringify(at("out.xlsx"))}, new Uint8Array(600e6));`;
    const child = spawn(process.execPath, ["--import", "tsx", "--input-type=module", "-e", script], {
      stdio: "inherit",
    });
    const ended = new Promise<string | null>((resolve) => child.on("exit", (_, by) => resolve(by)));
    while (!readdirSync(folder).some((name) => name.endsWith(".tmp")) && child.exitCode === null) {
      await new Promise((resolve) => setTimeout(resolve, 1));
    }
    child.kill(signal);
    expect(await ended).toBe(signal);
    expect(readFileSync(at("out.xlsx"), "utf8")).toBe("older");
    expect(readdirSync(folder).sort()).toEqual(["in.xlsx", "out.xlsx"]);
  });
});

describe("what is no workbook's file is refused in words, and soon:", () => {
  test.each<[string, string, string]>([
    ["an endless device", "/dev/zero", "/dev/zero is no file but a device."],
    ["an empty device", "/dev/null", "/dev/null is no file but a device."],
    ["a file that the system makes while it is read", "/proc/self/maps", "/proc/self/maps is empty."],
    ["a path through a file", "in.xlsx/a", "in.xlsx/a cannot be read: its path leads through a file."],
    ["a name that is too long", "a".repeat(300), `${"a".repeat(300)} cannot be read: its name is too long.`],
    ["no name", "", "A file name is empty. See --help."],
    [
      "a dash",
      "-",
      "- is no file here, for a workbook is not read or written piece by piece; write ./- if that is its name. See --help.",
    ],
  ])("%s", (_, name, sentence) => expect(run(name, "-o", "out.xlsx")).toEqual(refused(sentence)));

  test("a pipe, an empty file, and one that is too large", () => {
    execFileSync("mkfifo", [at("pipe")]);
    expect(run("pipe", "-o", "out.xlsx")).toEqual(refused("pipe is no file but a pipe."));
    put("empty.xlsx", "");
    expect(run("empty.xlsx", "-o", "out.xlsx")).toEqual(refused("empty.xlsx is empty."));
    truncateSync(put("large.xlsx", "a"), 300 * 1024 * 1024);
    expect(run("large.xlsx", "-o", "out.xlsx")).toEqual(refused("large.xlsx is larger than 256 MB."));
  });

  test("an output without a name, or a dash", () => {
    expect(run("in.xlsx", "-o", "")).toEqual(refused("A file name is empty. See --help."));
    expect(run("in.xlsx", "-o", "-").status).toBe(2);
  });

  test("names that begin with a dash are options, unless a path or -- comes before", () => {
    put("-in.xlsx", good);
    expect(run("-in.xlsx", "-o", "out.xlsx").said).toMatch(/^recalculate: Unknown option '-i'.*See --help\.\n$/);
    expect(run("./-in.xlsx", "-o", "./-out.xlsx").status).toBe(0);
    expect(run("-o", "out.xlsx", "--", "-in.xlsx").status).toBe(0);
  });
});

describe("the terminal", () => {
  const esc = "\u001b]0;owned\u0007\u009b31m\u202egnp.\u2066\u200b";
  const hostile = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u200b-\u200f\u202a-\u202e\u2066-\u2069]/;

  test("gets no control or direction mark out of a name, a sheet or a cell, but sees them written out", () => {
    const name = `${esc}.xlsx`;
    const missing = run(name, "-o", "out.xlsx");
    expect(missing).toEqual(
      refused("\\u{1b}]0;owned\\u{7}\\u{9b}31m\\u{202e}gnp.\\u{2066}\\u{200b}.xlsx is not there."),
    );
    put(
      "in.xlsx",
      handmade({
        sheets: [{ name: "a\u202eb", xml: sheetXml('<row r="1"><c r="A1"><f>CUBEVALUE(1)</f><v>5</v></c></row>') }],
      }),
    );
    const { status, said } = run("in.xlsx", "-o", "out.xlsx");
    expect(status).toBe(1);
    expect(said).not.toMatch(hostile);
    expect(said).toContain("a\\u{202e}b");
    expect(run("in.xlsx", `--${esc}`).said).not.toMatch(hostile);
  });

  test("may be closed: the command ends quietly, with its own exit code", () => {
    for (const [redirected, code] of [
      ["| true", "0"],
      ["| head -c 1 >/dev/null", "0"],
      [">/dev/full", "0"],
      [">&-", "0"],
    ]) {
      const script = `{ "$0" "$@" 2>err; echo $? >code; } ${redirected}`;
      spawnSync("sh", ["-c", script, process.execPath, command, "in.xlsx", "-o", "out.xlsx"], { cwd: folder });
      expect([readFileSync(at("code"), "utf8").trim(), readFileSync(at("err"), "utf8")], redirected).toEqual([
        code,
        "",
      ]);
    }
  });
});

/** Letters that no packing makes smaller, the same at every run. */
function noise(length: number): string {
  let seed = 1;
  let text = "";
  while (text.length < length) {
    seed = (seed * 48_271) % 2_147_483_647;
    text += seed.toString(36);
  }
  return text;
}
