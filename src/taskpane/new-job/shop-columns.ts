import { columnLetters } from "../../workbook/address";
import { headingsOf, type Choices, type ShopTable } from "../../workbook/new-job/index";
import { element } from "../element";
import type { SelectedTable } from "../host/host";
import { MESSAGES } from "../messages";
import { guessedColumns, possibleHeadings } from "./guessed-columns";
import { labeled } from "./job-form";

/** The columns of a table that the shop already has, each to be named as ours are. */
export interface ShopColumns {
  fields: HTMLElement;
  table(): ShopTable;
}

export function shopColumns({ sheet, row, column, values }: SelectedTable, from: Choices["from"]): ShopColumns {
  const [headings = [], ...body] = values;
  const guessed = guessedColumns(headings, from);
  const selects = headings.map((heading, place) => ({ place, heading: String(heading), field: choice(from) }));
  for (const [name, place] of guessed) selects[place]!.field.value = name;
  const lacking = element("p", { role: "status" });
  const tell = (): void => {
    const chosen = selects.map(({ field }) => field.value);
    const open = headingsOf(from).filter(({ name, isNeeded }) => isNeeded && !chosen.includes(name));
    lacking.textContent = open.length > 0 ? MESSAGES.unmapped(open.map(({ name }) => name)) : "";
  };
  tell();
  for (const { field } of selects)
    field.addEventListener("change", () => {
      // One of ours is one of theirs: what is chosen anew is taken from where it was.
      for (const other of selects)
        if (other.field !== field && other.field.value === field.value) other.field.value = "";
      tell();
    });
  const letters = (place: number): string => columnLetters(column + place);
  const rows = rowsOf(body);
  return {
    fields: element(
      "fieldset",
      {},
      element("legend", {}, "Your table"),
      element("p", {}, MESSAGES.table(`${sheet}!${letters(0)}${row + 1}`, rows)),
      ...selects.map(({ place, heading, field }) => labeled(`${letters(place)}: ${heading || "(no heading)"}`, field)),
      lacking,
    ),
    table: () => ({
      sheet,
      first: row + 2,
      count: rows,
      columns: Object.fromEntries(
        selects.flatMap(({ place, field }) => (field.value === "" ? [] : [[field.value, letters(place)]])),
      ),
    }),
  };
}

/** Down to the last row that holds anything. */
const rowsOf = (body: readonly unknown[][]): number =>
  body.reduce((last, cells, i) => (cells.some((value) => value !== "") ? i + 1 : last), 0);

const choice = (from: Choices["from"]): HTMLSelectElement =>
  element(
    "select",
    {},
    element("option", { value: "" }, "not used"),
    ...possibleHeadings(from).map((name) => element("option", { value: name }, name)),
  );
