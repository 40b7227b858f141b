import * as z from "zod/mini";
import { FRACTION_FORMAT } from "../edit/number-formats";

const cell = {
  /** Its id; older versions of the page kept its number in the file. */
  sheet: z.union([z.string(), z.int()]),
  row: z.int(),
  column: z.int(),
  content: z.union([z.object({ formula: z.string() }), z.string(), z.number(), z.boolean(), z.null()]),
  format: z.optional(z.string()),
  /** Older versions of the page knew no other number format. */
  isFraction: z.optional(z.boolean()),
};

type Kept<T> = Omit<T, "isFraction">;
const ofNow = <T extends { format?: string | undefined; isFraction?: boolean | undefined }>({
  isFraction,
  ...edit
}: T): Kept<T> => (isFraction && edit.format === undefined ? { ...edit, format: FRACTION_FORMAT } : edit);

const id = z.string();
const before = z.optional(id);
const cellEdit = z.pipe(z.object(cell), z.transform(ofNow));
const lostEdit = z.pipe(z.object({ ...cell, sheet: id }), z.transform(ofNow));

const change = z.union([
  z.object({ kind: z.literal("add"), id, name: z.string(), before }),
  z.object({ kind: z.literal("rename"), id, name: z.string() }),
  z.object({ kind: z.literal("move"), id, before }),
  z.object({ kind: z.literal("delete"), id, lost: z.optional(z.array(lostEdit)) }),
  cellEdit,
]);

const keptWork = z.object({
  name: z.string(),
  bytes: z.instanceof(Uint8Array<ArrayBufferLike>),
  /** What was changed since the file was opened. */
  edits: z.array(change),
  /** As much of it as has been written into a file. */
  saved: z.array(change),
  /** Sheets stand in the bytes that are in no file of the person's yet. */
  isAhead: z.optional(z.boolean()),
});

/** What is kept on this device, so that a reload costs nobody their work. */
export type KeptWork = z.infer<typeof keptWork>;

/** Kept work as it comes back; undefined where it has another shape, as what an older version of the page kept may. */
export const readKept = (stored: unknown): KeptWork | undefined => keptWork.safeParse(stored).data;

/** Whether something in it is in no file yet. */
export const isUnsaved = ({ edits, saved, isAhead }: KeptWork): boolean =>
  isAhead === true || JSON.stringify(edits) !== JSON.stringify(saved);

const whole = z.looseObject({
  name: z.optional(z.string()),
  bytes: z.optional(z.instanceof(Uint8Array<ArrayBufferLike>)),
  at: z.optional(z.number()),
});

/** As much as can be told of what has been kept, whatever its shape. */
export function aboutKept(stored: unknown): { name: string; at: number; bytes?: Uint8Array } {
  const { name = "", at = 0, bytes } = whole.safeParse(stored).data ?? {};
  return { name: name || "a workbook", at, ...(bytes ? { bytes } : {}) };
}
