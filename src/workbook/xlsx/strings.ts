import { decodeEscapes, readXml } from "./xml";

/** The texts that cells refer to by number. Rich text is its runs together; the reading aids above it are left out. */
export function readSharedStrings(text: string, part: string): string[] {
  const strings: string[] = [];
  const collector = new TextCollector();
  readXml(text, part, {
    open: ({ name }) => {
      if (name === "si") collector.start();
      else collector.open(name);
    },
    text: (found) => collector.text(found),
    close: (name) => {
      if (name === "si") strings.push(collector.finish());
      else collector.close(name);
    },
  });
  return strings;
}

/** Gathers the `t` elements of a shared or inline string. */
export class TextCollector {
  private gathered = "";
  private inText = false;
  private inPhonetic = false;

  start(): void {
    this.gathered = "";
    this.inText = this.inPhonetic = false;
  }

  open(name: string): void {
    if (name === "rPh") this.inPhonetic = true;
    if (name === "t") this.inText = true;
  }

  close(name: string): void {
    if (name === "rPh") this.inPhonetic = false;
    if (name === "t") this.inText = false;
  }

  text(found: string): void {
    if (this.inText && !this.inPhonetic) this.gathered += found;
  }

  finish(): string {
    return decodeEscapes(this.gathered);
  }
}
