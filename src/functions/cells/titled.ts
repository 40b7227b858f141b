/** A name as it begins a row or a heading. */
export const titled = (name: string): string => name[0]!.toUpperCase() + name.slice(1);
