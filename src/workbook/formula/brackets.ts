/**
 * The place just after the bracket that closes the one at `start`; an apostrophe escapes the next character. Undefined
 * where it is not closed.
 */
export function closingBracket(text: string, start: number): number | undefined {
  let depth = 0;
  for (let i = start; i < text.length; i++) {
    if (text[i] === "'") i++;
    else if (text[i] === "[") depth++;
    else if (text[i] === "]" && --depth === 0) return i + 1;
  }
  return undefined;
}
