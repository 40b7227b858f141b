import { newEntry } from "./new-entry";
import type { Package } from "./package";
import type { Entry } from "./zip";
import { writeArchive } from "./write-zip";

/** A workbook's archive while parts of it are changed, added or left out. All others keep every byte. */
export class PackageDraft {
  private readonly changed = new Map<string, string>();
  private readonly added: Entry[] = [];
  private readonly removed = new Set<string>();
  private readonly known: Set<string>;

  constructor(private readonly source: Package) {
    this.known = new Set(source.archive.entries.map(({ name }) => name.toLowerCase()));
  }

  /** Whether anything is other than it was. */
  get isChanged(): boolean {
    return this.changed.size > 0 || this.removed.size > 0;
  }

  /** The parts that are there, by the names that the archive has for them. */
  get names(): string[] {
    const { archive } = this.source;
    return [...archive.entries, ...this.added].map(({ name }) => name).filter((name) => !this.removed.has(name));
  }

  has(name: string): boolean {
    return this.known.has(name.toLowerCase());
  }

  text(name: string): string {
    return this.changed.get(name) ?? this.source.text(name);
  }

  set(name: string, text: string): void {
    const own = this.source.has(name) ? this.source.entryName(name) : name;
    if (text !== this.text(own)) this.changed.set(own, text);
  }

  add(name: string, text: string): void {
    this.added.push(newEntry(name, this.source.archive));
    this.changed.set(name, text);
    this.known.add(name.toLowerCase());
  }

  remove(name: string): void {
    this.removed.add(this.source.entryName(name));
    this.known.delete(name.toLowerCase());
  }

  bytes(): Uint8Array {
    const { archive } = this.source;
    const entries = [...archive.entries, ...this.added].filter(({ name }) => !this.removed.has(name));
    const encode = (text: string) => new TextEncoder().encode(text);
    const replaced = new Map([...this.changed].map(([name, text]) => [name, encode(text)]));
    return writeArchive({ ...archive, entries }, replaced);
  }
}
