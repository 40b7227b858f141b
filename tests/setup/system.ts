import { spawnSync } from "node:child_process";

/** Programs that tests run, and the Debian package that holds each. */
const PROGRAMS = [
  { program: "soffice", debian: "libreoffice-calc", what: "LibreOffice Calc (soffice)" },
  { program: "chromium", debian: "chromium", what: "Chromium (chromium)" },
  { program: "pdftocairo", debian: "poppler-utils", what: "Poppler (pdftocairo)" },
  { program: "python3", debian: "python3", what: "Python 3 (python3)" },
];

/** Installs what is missing where that can be done; else says in one line what to install, and the tests that need it fail. */
export default function setup(): void {
  for (const { program, debian, what } of PROGRAMS) {
    if (found(program) || (canInstall() && install(debian) && found(program))) continue;
    console.error(`The tests need ${what} on the PATH: install it (Debian: apt-get install ${debian}).`);
  }
}

const found = (program: string): boolean => run("sh", ["-c", `command -v ${program}`]);
const canInstall = (): boolean => process.getuid?.() === 0 && found("apt-get");

function install(debian: string): boolean {
  console.error(`Installing ${debian} …`);
  return (
    run("apt-get", ["update", "-qq"]) && run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", debian])
  );
}

const run = (command: string, args: string[]): boolean =>
  spawnSync(command, args, { stdio: "ignore", env: { ...process.env, DEBIAN_FRONTEND: "noninteractive" } }).status ===
  0;
