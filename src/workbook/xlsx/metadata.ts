import { readXml } from "./xml";

/** The values of `cm` that mark a dynamic array formula: records of the type XLDAPR, counted from 1. */
export function readDynamicMarks(text: string, part: string): Set<string> {
  const types: string[] = [];
  const marks = new Set<string>();
  let records = 0;
  let inCells = false;
  readXml(text, part, {
    open({ name, attributes }) {
      if (name === "metadataType") types.push(attributes.name ?? "");
      if (name === "cellMetadata") inCells = true;
      if (!inCells) return;
      if (name === "bk") records++;
      if (name === "rc" && types[Number(attributes.t) - 1] === "XLDAPR") marks.add(String(records));
    },
    close(name) {
      if (name === "cellMetadata") inCells = false;
    },
  });
  return marks;
}
