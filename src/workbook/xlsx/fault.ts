/** Why a file is not usable, in one line for a person. */
export class FileFault extends Error {}

/** The name in a message must not break its line. */
export function shown(text: string): string {
  return text.replace(/[\u0000-\u001f\u007f]+/g, " ");
}
