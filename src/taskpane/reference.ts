/** The function reference as the build reads it from the doc comments: neither page holds a text of its own on any function. */
export interface FunctionGroup {
  name: string;
  functions: FunctionEntry[];
}

export interface FunctionEntry {
  name: string;
  description: string;
  parameters: Parameter[];
  returns: string;
  throws: string[];
  examples: Example[];
  sources: string[];
}

export interface Parameter {
  name: string;
  description: string;
  optional: boolean;
}

export interface Example {
  formula: string;
  result: string;
}

/**
 * A function as it is typed, arguments that may be left out in brackets.
 * @example signature(boxwidth) // "DRAWER.BOXWIDTH(opening_width, [slide], [unit])"
 */
export const signature = ({ name, parameters }: FunctionEntry): string =>
  `DRAWER.${name}(${parameters.map(bracketed).join(", ")})`;

/** An argument's name, in brackets where it may be left out. */
export const bracketed = ({ name, optional }: Parameter): string => (optional ? `[${name}]` : name);
