import type { OpenedBook } from "../worker/messages";

/** An opened workbook as a text, and back: what goes from the worker to the page as it is. */
export const toText = (opened: OpenedBook): string =>
  JSON.stringify(opened, (_, value: unknown) => (value instanceof Map ? { [MAP]: [...value] } : value));

export const fromText = (text: string): OpenedBook =>
  JSON.parse(text, (_, value: { [MAP]?: [unknown, unknown][] } | null) =>
    value?.[MAP] ? new Map(value[MAP]) : value,
  ) as OpenedBook;

const MAP = "map of";
