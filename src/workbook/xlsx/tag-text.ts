/** Sets or (with null) removes attributes in a start tag's text and leaves every other character alone. */
export function withAttributes(tag: string, changes: Record<string, string | null>): string {
  let text = tag;
  for (const [name, value] of Object.entries(changes)) text = withAttribute(text, name, value);
  return text;
}

function withAttribute(tag: string, name: string, value: string | null): string {
  const found = attributeAt(tag, name);
  if (found && value === null) return tag.slice(0, found.start) + tag.slice(found.end);
  if (found) return tag.slice(0, found.valueStart) + value + tag.slice(found.end - 1);
  if (value === null) return tag;
  const close = tag.endsWith("/>") ? tag.length - 2 : tag.length - 1;
  const before = tag.slice(0, close).trimEnd();
  return `${before} ${name}="${value}"${tag.slice(before.length)}`;
}

/** Where an attribute stands, from the space before its name to its closing quote. The tag is known to be well-formed. */
function attributeAt(tag: string, name: string): { start: number; valueStart: number; end: number } | undefined {
  // Most tags of a sheet have one attribute or two, and are asked for others.
  if (!tag.includes(name)) return undefined;
  const pattern = /\s+([^\s=/>]+)\s*=\s*(["'])/g;
  for (let match = pattern.exec(tag); match; match = pattern.exec(tag)) {
    const valueStart = pattern.lastIndex;
    const end = tag.indexOf(match[2]!, valueStart) + 1;
    if (match[1] === name) return { start: match.index, valueStart, end };
    pattern.lastIndex = end;
  }
  return undefined;
}
