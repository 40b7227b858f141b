import { readFileSync } from "node:fs";
import { join } from "node:path";
import { DOMParser, type Element } from "@xmldom/xmldom";

/** A manifest, read for testing; finding nothing is an error. */
export interface Manifest {
  root: Element;
  /** All elements of a name, prefixes left out, in their order. */
  all(name: string): Element[];
  /** The one element of a name. */
  one(name: string): Element;
}

/** Reads the manifest.xml of a built add-in. */
export function readManifest(folder: string): Manifest {
  const text = readFileSync(join(folder, "manifest.xml"), "utf8");
  const root = new DOMParser().parseFromString(text, "text/xml").documentElement!;
  const all = (name: string) => Array.from(root.getElementsByTagNameNS("*", name));
  const one = (name: string) => {
    const [found, ...more] = all(name);
    if (!found || more.length > 0) throw new Error(`The manifest has ${found ? "several" : "no"} ${name}.`);
    return found;
  };
  return { root, all, one };
}

/** An element's child elements. */
export const children = (parent: Element): Element[] =>
  Array.from(parent.childNodes).filter((node): node is Element => node.nodeType === node.ELEMENT_NODE);

/** The names of an element's child elements, prefixes left out. */
export const names = (parent: Element): string[] => children(parent).map(({ localName }) => localName!);

/** What a resource of an id stands for. */
export const resource = ({ all }: Manifest, id: string): string => {
  const found = ["Image", "Url", "String"].flatMap(all).filter((item) => item.getAttribute("id") === id);
  if (found.length !== 1) throw new Error(`${found.length} resources have the id ${id}.`);
  return found[0]!.getAttribute("DefaultValue") ?? "";
};
