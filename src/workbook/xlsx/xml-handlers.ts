/** An element's start, as it is met. `start` and `end` are its tag's place in the text. */
export interface Tag {
  /** The name without its prefix. */
  name: string;
  prefix: string;
  attributes: Record<string, string>;
  start: number;
  end: number;
  selfClosing: boolean;
}

export interface Handlers {
  open?(tag: Tag): void;
  /** `start` is where the end tag begins, `end` where it ends; equal for an element that closes itself. */
  close?(name: string, prefix: string, start: number, end: number): void;
  text?(text: string): void;
}
