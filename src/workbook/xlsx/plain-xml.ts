import type { Handlers } from "./xml-handlers";

/**
 * Reads a part that is written as spreadsheet programs write theirs: elements, attributes in double quotes, text and
 * the five named entities; no comments, no sections, no instructions. A sheet of a million cells is read so in a
 * quarter of the time. Whatever else stands in a text, a fault above all, is left to the library.
 * @returns false where the text is not so plain; nothing has then been handled
 */
export function readPlainXml(text: string, handlers: Handlers): boolean {
  if (ODD.test(text) || text.includes("]]>") || !walk(text)) return false;
  walk(text, handlers);
  return true;
}

/** Characters that no part needs, that are not allowed, or that are two in one. */
const ODD = /[^\t\n\r\x20-\x7e\xa0-\ud7ff\ue000-\ufffd]/;
const DECLARATION = /^<\?xml version="1\.0"(?: encoding="(?:UTF|utf)-8")?(?: standalone="(?:yes|no)")? ?\?>/;
const ENTITY = /&(?:(amp|lt|gt|quot|apos);)?/g;
const ENTITIES: Record<string, string> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** The library says so itself, where there are more. */
const MOST = { attributes: 64, depth: 200 };

/** Goes once through the text. Without handlers it only looks, and gives false at the first thing that is not plain. */
function walk(text: string, handlers?: Handlers): boolean {
  const open: string[] = [];
  let isBegun = false;
  let at = DECLARATION.exec(text)?.[0].length ?? 0;
  for (;;) {
    const start = text.indexOf("<", at);
    if (!between(text, at, start < 0 ? text.length : start, open.length > 0, handlers)) return false;
    if (start < 0) return isBegun && open.length === 0;
    if (text.charCodeAt(start + 1) === SLASH) {
      const name = open.pop();
      if (name === undefined || !text.startsWith(name, start + 2)) return false;
      at = pastSpace(text, start + 2 + name.length);
      if (text.charCodeAt(at++) !== GREATER) return false;
      if (handlers) closed(name, start, at, handlers);
      continue;
    }
    if ((isBegun && open.length === 0) || open.length > MOST.depth) return false;
    isBegun = true;
    const nameEnd = pastName(text, start + 1);
    if (nameEnd === start + 1) return false;
    const name = text.slice(start + 1, nameEnd);
    const attributes: Record<string, string> | undefined = handlers && {};
    const end = attributes ? readAttributes(text, nameEnd, attributes) : checkAttributes(text, nameEnd);
    if (end < 0) return false;
    const selfClosing = text.charCodeAt(end) === SLASH;
    at = end + (selfClosing ? 2 : 1);
    if (attributes && handlers?.open) {
      const [local, prefix] = splitName(name);
      handlers.open({ name: local, prefix, attributes, start, end: at, selfClosing });
    }
    if (!selfClosing) open.push(name);
    else if (handlers) closed(name, at, at, handlers);
  }
}

/** The text between two tags; outside of all elements nothing but spaces may stand. */
function between(text: string, from: number, to: number, isInside: boolean, handlers: Handlers | undefined): boolean {
  if (from === to) return true;
  if (!isInside) return pastSpace(text, from) >= to;
  const found = text.slice(from, to);
  if (!handlers) return !found.includes("&") || isReadable(found);
  handlers.text?.(decoded(found.includes("\r") ? found.replace(/\r\n?/g, "\n") : found));
  return true;
}

function closed(tag: string, start: number, end: number, handlers: Handlers): void {
  const [name, prefix] = splitName(tag);
  handlers.close?.(name, prefix, start, end);
}

/** An element's name without its prefix, and the prefix with its colon. */
export function splitName(name: string): [name: string, prefix: string] {
  const colon = name.indexOf(":");
  return colon < 0 ? [name, ""] : [name.slice(colon + 1), name.slice(0, colon + 1)];
}

/** Goes through a tag's attributes. Gives where its last bracket, or the stroke before it, stands; -1 where it is not plain. */
function checkAttributes(text: string, from: number): number {
  // Most tags have one attribute, which needs no list.
  let names: string[] | undefined;
  for (let at = from; ;) {
    const start = pastSpace(text, at);
    const code = text.charCodeAt(start);
    if (code === GREATER) return start;
    if (code === SLASH) return text.charCodeAt(start + 1) === GREATER ? start : -1;
    const end = start === at ? start : pastName(text, start);
    if (end === start || text.charCodeAt(end) !== EQUALS || text.charCodeAt(end + 1) !== QUOTE) return -1;
    const name = text.slice(start, end);
    if (!names) names = [name];
    else if (names.includes(name) || names.push(name) > MOST.attributes) return -1;
    at = pastValue(text, end + 2);
    if (at < 0) return -1;
  }
}

/** Where an attribute's value has ended with its second quote; -1 where it is not plain. */
function pastValue(text: string, from: number): number {
  for (let at = from; ; at++) {
    const code = text.charCodeAt(at);
    if (code === QUOTE) return at + 1;
    if (code === AMPERSAND) return pastReadable(text, from);
    // Beyond the text's end there is no number at all.
    if (!(code >= 32) || code === LESS) return -1;
  }
}

/** The same for a value with entities in it. */
function pastReadable(text: string, from: number): number {
  const end = text.indexOf('"', from);
  const value = text.slice(from, end);
  return end < 0 || /[<\t\n\r]/.test(value) || !isReadable(value) ? -1 : end + 1;
}

/** Takes in the attributes of a tag that has been gone through. Gives where its last bracket, or the stroke before it, stands. */
function readAttributes(text: string, from: number, attributes: Record<string, string>): number {
  for (let start = pastSpace(text, from); ;) {
    const code = text.charCodeAt(start);
    if (code === GREATER || code === SLASH) return start;
    const equals = text.indexOf("=", start);
    const close = text.indexOf('"', equals + 2);
    attributes[text.slice(start, equals)] = decoded(text.slice(equals + 2, close));
    start = pastSpace(text, close + 1);
  }
}

const isReadable = (text: string): boolean =>
  !text.includes("&") || [...text.matchAll(ENTITY)].every(([, name]) => name !== undefined);

const decoded = (text: string): string =>
  text.includes("&") ? text.replace(ENTITY, (_, name: string) => ENTITIES[name]!) : text;

const SLASH = 0x2f;
const LESS = 0x3c;
const AMPERSAND = 0x26;
const GREATER = 0x3e;
const EQUALS = 0x3d;
const QUOTE = 0x22;

function pastSpace(text: string, from: number): number {
  let at = from;
  for (let code = text.charCodeAt(at); code === 32 || code === 10 || code === 13 || code === 9;) {
    code = text.charCodeAt(++at);
  }
  return at;
}

/** A letter, then letters, digits, points, strokes and at most one colon between two names. */
function pastName(text: string, from: number): number {
  let at = from;
  let hasColon = false;
  for (let isFirst = true; ; at++) {
    const code = text.charCodeAt(at);
    const isLetter = (code >= 97 && code <= 122) || (code >= 65 && code <= 90);
    if (isLetter) isFirst = false;
    else if (isFirst) return from;
    else if (code === 58 && !hasColon) hasColon = isFirst = true;
    else if (!((code >= 48 && code <= 57) || code === 46 || code === 45 || code === 95)) return at;
  }
}
