import { FileFault } from "./fault";

/** What the XML parts of a workbook that are read may hold in all. */
const TEXT_LIMITS = { bytes: 128 * 1024 * 1024, elements: 2_000_000 } as const;

/**
 * One file's budget: every element that is read costs memory many times its length, and nothing in an archive says how
 * many there are. They are counted before the first is read, whichever they are: cells, rows, texts, names, rules.
 */
export class TextBudget {
  private bytes = 0;
  private elements = 0;

  /** Before a part is unpacked. */
  ask(bytes: number): void {
    this.bytes += bytes;
    if (this.bytes <= TEXT_LIMITS.bytes) return;
    throw new FileFault(
      `The workbook's parts are more than ${TEXT_LIMITS.bytes / 1024 / 1024} MB of text, unpacked; that much is not read.`,
    );
  }

  /** Before a part is read. Start tags are counted, and comments as if they were some. */
  count(part: Uint8Array): void {
    for (let at = part.indexOf(LESS); at >= 0; at = part.indexOf(LESS, at + 1)) {
      if (part[at + 1] !== SLASH) this.elements++;
    }
    if (this.elements <= TEXT_LIMITS.elements) return;
    throw new FileFault(
      `The workbook holds ${this.elements.toLocaleString("en-US")} elements (cells, rows, values, texts, names); ` +
        `at most ${TEXT_LIMITS.elements.toLocaleString("en-US")} are read.`,
    );
  }
}

const LESS = 0x3c;
const SLASH = 0x2f;
