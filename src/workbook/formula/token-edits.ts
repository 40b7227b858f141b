import type { Edit } from "../text-edits";
import { tokens, type Token } from "./lexer";

/**
 * What becomes other in a formula, token by token.
 * @param change what stands in a token's place; undefined where it stays
 */
export const tokenEdits = (formula: string, change: (token: Token) => string | undefined): Edit[] =>
  tokens(formula).flatMap((token) => {
    const text = change(token);
    return text === undefined ? [] : [{ start: token.start, end: token.end, text }];
  });
