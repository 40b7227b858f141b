import type { NoData } from "../../core/length";

/** What a cell held, whatever that was. */
type Received = { received: unknown };
type Between = { least: number; most: number };

declare module "../../core/length" {
  interface Faults {
    "argument.blank": { wanted: string; received?: unknown };
    "argument.range": { rows: number; columns: number };
    "argument.unsupported": { type: string };
    "argument.date": NoData;
    "zero.doubtful": { usual: string; mark?: string | undefined };

    "length.wrongType": Received;
    "length.notFinite": Received;
    "length.tooLarge": Received & { largest: number };
    "number.wrongType": Received;
    "number.negative": Received;
    "number.notWhole": Received & Between;
    "number.outOfRange": Received & Between;
    "price.mayBeDate": Received;
    "percent.doubtful": Received;
    "word.unknown": Received & { allowed: readonly string[] };
    "text.wrongType": Received;
    "list.empty": NoData;
    "measure.unreadable": Received & { plain: string };
    "measure.outOfRange": Received & Between & { plain: string };

    "table.tooLong": { table: string; rows: number; most: number };
    "result.tooLarge": { rows: string; size: string; most: string };
    "result.longText": { row: number; length: string; most: string };
  }
}
