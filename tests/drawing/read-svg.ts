import { SaxesParser } from "saxes";

/** Reads a drawing's file as any reader of XML does. @throws where it is not well-formed */
export function readSvg(svg: string): { names: Set<string>; texts: string[]; attributes: Set<string> } {
  const names = new Set<string>();
  const attributes = new Set<string>();
  const texts: string[] = [];
  const path: string[] = [];
  const parser = new SaxesParser();
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes: own }) => {
    names.add(name);
    for (const attribute of Object.keys(own)) attributes.add(attribute);
    path.push(name);
    if (name === "text") texts.push("");
  });
  parser.on("closetag", () => void path.pop());
  parser.on("text", (text) => {
    if (["text", "tspan"].includes(path[path.length - 1]!)) texts[texts.length - 1] += text;
  });
  parser.write(svg).close();
  return { names, texts, attributes };
}
