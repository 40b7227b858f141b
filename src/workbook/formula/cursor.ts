import { tokens, type Token, type TokenKind } from "./lexer";

/** The spreadsheet program nests functions 64 deep; parentheses and signs may go further. */
const DEEPEST = 256;

/** Walks over a formula's tokens. */
export class Cursor {
  private readonly tokens: Token[];
  private index = 0;
  private depth = 0;

  constructor(readonly text: string) {
    this.tokens = tokens(text);
  }

  /** What stands here; undefined at the end. */
  get token(): Token | undefined {
    return this.tokens[this.index];
  }

  /** What stands behind it. */
  get next(): Token | undefined {
    return this.tokens[this.index + 1];
  }

  /** Where it begins. */
  get position(): number {
    return this.token?.start ?? this.text.length;
  }

  /** Where what was taken last ends. */
  get end(): number {
    return this.tokens[this.index - 1]?.end ?? 0;
  }

  /** What stands behind spaces, if there are any; nothing is passed over. */
  get ahead(): Token | undefined {
    return this.token?.kind === "space" ? this.next : this.token;
  }

  /** Takes a token of the kind, if one stands here. */
  take(...kinds: readonly TokenKind[]): Token | undefined {
    const { token } = this;
    if (token === undefined || !kinds.includes(token.kind)) return undefined;
    this.index++;
    return token;
  }

  /** Takes one of the operators, if it stands here. */
  takeOperator(...operators: readonly string[]): Token | undefined {
    const { token } = this;
    return token?.kind === "operator" && operators.includes(token.text) ? this.take("operator") : undefined;
  }

  skipSpace(): boolean {
    return this.take("space") !== undefined;
  }

  expect(operator: string): void {
    this.skipSpace();
    if (!this.takeOperator(operator)) throw this.fault(`“${operator}” is expected`);
  }

  fault(message: string): SyntaxError {
    return new SyntaxError(`${message} after “=${excerpt(this.text.slice(0, this.position))}”`);
  }

  /** Reads what stands inside something else. */
  inside<T>(read: () => T): T {
    if (++this.depth > DEEPEST) throw this.fault(`It is nested more than ${DEEPEST} deep`);
    const found = read();
    this.depth--;
    return found;
  }
}

/** Enough of a formula to know it by. */
export function excerpt(text: string): string {
  return text.length > 200 ? `${text.slice(0, 200)}…` : text;
}
