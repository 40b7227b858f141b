/** The functions.json that a host reads, as far as it is checked and mended here. */
export interface Metadata {
  allowCustomDataForDataTypeAny?: boolean;
  allowErrorForDataTypeAny?: boolean;
  functions: MetadataFunction[];
  enums?: Enumeration[];
}

interface MetadataFunction {
  id: string;
  name: string;
  description?: string;
  helpUrl?: string;
  parameters: { name: string; customEnumId?: string }[];
  result: unknown;
}

interface Enumeration {
  id: string;
  type: string;
  values: unknown[];
}

/** Metadata fit for the host, and what is wrong with it; with problems it must not be used. */
export interface TidyMetadata {
  metadata: Metadata;
  problems: string[];
}

/**
 * Mends what the generator leaves undone. A list of words stands in every file that uses it, so equal enumerations
 * are merged; and errors that come in must reach the functions, which hand them on.
 * @param generated what the metadata generator wrote
 * @param help the address of a function's help, by its name
 */
export function tidyMetadata(generated: Metadata, help: (name: string) => string): TidyMetadata {
  const { enums, problems } = mergeEnumerations(generated.enums ?? []);
  return {
    metadata: {
      allowErrorForDataTypeAny: true,
      allowCustomDataForDataTypeAny: true,
      functions: generated.functions.map((one) => ({ ...one, helpUrl: help(one.name) })),
      ...(enums.length > 0 ? { enums } : {}),
    },
    problems: [
      ...problems,
      ...doubled(generated.functions, "id"),
      ...doubled(generated.functions, "name"),
      ...unknownEnumerations(generated.functions, enums),
    ],
  };
}

function mergeEnumerations(all: readonly Enumeration[]): { enums: Enumeration[]; problems: string[] } {
  const kept = new Map<string, Enumeration>();
  const unequal = new Set<string>();
  for (const enumeration of all) {
    const first = kept.get(enumeration.id);
    if (!first) kept.set(enumeration.id, enumeration);
    else if (JSON.stringify(first) !== JSON.stringify(enumeration)) unequal.add(enumeration.id);
  }
  const problems = [...unequal].map(
    (id) => `The enumeration ${id} has different words in different files. Make them equal, or give one another name.`,
  );
  return { enums: [...kept.values()], problems };
}

/** Hosts fold case, so a name that differs in case alone is the same name. */
function doubled(functions: readonly MetadataFunction[], key: "id" | "name"): string[] {
  const seen = functions.map((candidate) => candidate[key].toUpperCase());
  const twice = new Set(seen.filter((value, i) => seen.indexOf(value) !== i));
  return [...twice].map((value) => `Two functions have the ${key} ${value}. Every function needs its own.`);
}

const unknownEnumerations = (functions: readonly MetadataFunction[], enums: readonly Enumeration[]): string[] =>
  functions.flatMap(({ name, parameters }) =>
    parameters
      .filter(({ customEnumId }) => customEnumId !== undefined && !enums.some(({ id }) => id === customEnumId))
      .map((parameter) => `${name} offers the words of ${parameter.customEnumId}, which is no enumeration.`),
  );
