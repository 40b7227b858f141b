import ts from "typescript";

/** What a doc comment says of one cell function, beside what its declaration says; nothing is checked here. */
export interface FunctionDoc {
  file: string;
  name: string;
  /** All text before the first tag, which the host shows. */
  description: string;
  /** The parameters that the comment describes, in its order. */
  described: DescribedParameter[];
  /** The parameters that the function takes, in its order. */
  declared: DeclaredParameter[];
  group: string[];
  returns: string[];
  throws: string[];
  examples: string[];
  sources: string[];
}

interface DeclaredParameter {
  name: string;
  optional: boolean;
}

interface DescribedParameter extends DeclaredParameter {
  description: string;
}

/**
 * Reads the doc comments of the cell functions in one source text.
 * @param source the text of a TypeScript file
 * @param file its name, for messages
 */
export function readFunctionDocs(source: string, file: string): FunctionDoc[] {
  const tree = ts.createSourceFile(file, source, ts.ScriptTarget.Latest, true);
  return tree.statements
    .filter(ts.isFunctionDeclaration)
    .filter(isCellFunction)
    .map((node) => readDoc(node, file));
}

const isCellFunction = (node: ts.FunctionDeclaration): boolean => tags(node, "customfunction").length > 0;

function readDoc(node: ts.FunctionDeclaration, file: string): FunctionDoc {
  const comment = ts.getJSDocCommentsAndTags(node).find(ts.isJSDoc);
  return {
    file,
    name: node.name?.text ?? "",
    description: text(comment?.comment),
    described: ts.getJSDocTags(node).filter(ts.isJSDocParameterTag).map(describedParameter),
    declared: node.parameters.map(({ name, questionToken, initializer }) => ({
      name: name.getText(),
      optional: questionToken !== undefined || initializer !== undefined,
    })),
    group: tags(node, "group"),
    returns: tags(node, "returns"),
    throws: tags(node, "throws"),
    examples: tags(node, "example"),
    sources: tags(node, "source"),
  };
}

const describedParameter = (tag: ts.JSDocParameterTag): DescribedParameter => ({
  name: tag.name.getText(),
  optional: tag.isBracketed,
  description: text(tag.comment),
});

const tags = (node: ts.Node, name: string): string[] =>
  ts
    .getJSDocTags(node)
    .filter((tag) => tag.tagName.text === name)
    .map((tag) => text(tag.comment));

const text = (comment: Parameters<typeof ts.getTextOfJSDocComment>[0]): string =>
  (ts.getTextOfJSDocComment(comment) ?? "").trim();
