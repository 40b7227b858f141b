import { readXml } from "./xml";

export interface Relationship {
  id: string;
  /** The last word of its type: `worksheet`, `sharedStrings`, `table` … */
  type: string;
  /** The part's name in the archive, without a leading slash. */
  target: string;
}

/** Reads a list of relationships; targets outside the archive are left out. */
export function readRelationships(text: string, list: string, folder: string): Relationship[] {
  const found: Relationship[] = [];
  readXml(text, list, {
    open: ({ name, attributes }) => {
      if (name !== "Relationship" || attributes.TargetMode === "External") return;
      const type = attributes.Type ?? "";
      found.push({
        id: attributes.Id ?? "",
        type: type.slice(type.lastIndexOf("/") + 1),
        target: resolve(folder, attributes.Target ?? ""),
      });
    },
  });
  return found;
}

function resolve(folder: string, target: string): string {
  const path = target.startsWith("/") ? target.slice(1) : folder + target;
  const steps: string[] = [];
  for (const step of path.split("/")) {
    if (step === "..") steps.pop();
    else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
}
