import { FileFault } from "./fault";
import { readRelationships, type Relationship } from "./relationships";
import { decode, readXml } from "./xml";
import { TextBudget } from "./text-budget";
import { readArchive, unpack, type Archive, type Entry } from "./zip";

/** A workbook's archive, its parts by name, each unpacked when it is asked for. */
export class Package {
  private readonly entries: Map<string, Entry>;
  private readonly texts = new Map<string, string>();
  private readonly lists = new Map<string, Relationship[]>();
  private readonly budget = new TextBudget();

  private constructor(readonly archive: Archive) {
    this.entries = new Map(archive.entries.map((entry) => [entry.name.toLowerCase(), entry]));
  }

  /** @throws FileFault where the bytes are no archive of a workbook */
  static open(bytes: Uint8Array): Package {
    refuseOtherKinds(bytes);
    return new Package(readArchive(bytes));
  }

  has(name: string): boolean {
    return this.entries.has(name.toLowerCase());
  }

  /** The name as the archive writes it. */
  entryName(name: string): string {
    return this.entry(name).name;
  }

  text(name: string): string {
    const key = name.toLowerCase();
    let text = this.texts.get(key);
    if (text === undefined) {
      const entry = this.entry(name);
      this.budget.ask(entry.size);
      const bytes = unpack(entry);
      this.budget.count(bytes);
      this.texts.set(key, (text = decode(bytes, name)));
    }
    return text;
  }

  /** What a part points to; a part without such a list points to nothing. */
  relationships(part: string): readonly Relationship[] {
    let found = this.lists.get(part);
    if (!found) {
      const slash = part.lastIndexOf("/") + 1;
      const list = `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
      const listed = this.has(list) ? readRelationships(this.text(list), list, part.slice(0, slash)) : [];
      // Letters' case tells no parts apart: whoever compares names has them as the archive writes them.
      found = listed.map((one) => (this.has(one.target) ? { ...one, target: this.entryName(one.target) } : one));
      this.lists.set(part, found);
    }
    return found;
  }

  /** The part of a kind that another points to, if it is there. */
  linked(from: string, type: string): string | undefined {
    return this.relationships(from).find((found) => found.type === type && this.has(found.target))?.target;
  }

  /** The kind of a part, as the list of content types has it. */
  contentType(part: string): string {
    let found = "";
    const extension = part.slice(part.lastIndexOf(".") + 1).toLowerCase();
    readXml(this.text("[Content_Types].xml"), "[Content_Types].xml", {
      open: ({ name, attributes }) => {
        if (name === "Default" && !found && attributes.Extension?.toLowerCase() === extension)
          found = attributes.ContentType ?? "";
        if (name === "Override" && attributes.PartName?.toLowerCase() === `/${part.toLowerCase()}`)
          found = attributes.ContentType ?? "";
      },
    });
    return found;
  }

  private entry(name: string): Entry {
    const entry = this.entries.get(name.toLowerCase());
    if (!entry) throw new FileFault(`The file is no workbook: its part ${name} is missing.`);
    return entry;
  }
}

function refuseOtherKinds(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new FileFault("The file is empty.");
  if (startsWith(bytes, [0xd0, 0xcf, 0x11, 0xe0])) {
    throw new FileFault(
      hasWideText(bytes, "EncryptedPackage")
        ? "The file is encrypted; save it without a password first."
        : "The file is an old .xls workbook, or encrypted; save it as .xlsx first.",
    );
  }
  if (!startsWith(bytes, [0x50, 0x4b, 0x03, 0x04])) throw new FileFault("The file is no .xlsx workbook.");
}

function startsWith(bytes: Uint8Array, start: number[]): boolean {
  return start.every((byte, i) => bytes[i] === byte);
}

/** The directory of such a file names its streams with two bytes a character. */
function hasWideText(bytes: Uint8Array, text: string): boolean {
  const wanted = [...text].flatMap((character) => [character.charCodeAt(0), 0]);
  for (let at = bytes.indexOf(wanted[0]!); at >= 0; at = bytes.indexOf(wanted[0]!, at + 1)) {
    if (wanted.every((byte, i) => bytes[at + i] === byte)) return true;
  }
  return false;
}
