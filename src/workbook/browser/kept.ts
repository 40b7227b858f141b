import * as z from "zod/mini";

const cellEdit = z.object({
  sheet: z.int(),
  row: z.int(),
  column: z.int(),
  content: z.union([z.object({ formula: z.string() }), z.string(), z.number(), z.boolean(), z.null()]),
  isFraction: z.optional(z.boolean()),
});

const keptWork = z.object({
  name: z.string(),
  bytes: z.instanceof(Uint8Array<ArrayBufferLike>),
  /** What was typed since the file was opened. */
  edits: z.array(cellEdit),
  /** As much of it as has been written into a file. */
  saved: z.array(cellEdit),
});

/** What is kept on this device, so that a reload costs nobody their work. */
export type KeptWork = z.infer<typeof keptWork>;

/** Kept work as it comes back; undefined where it has another shape, as what an older version of the page kept may. */
export const readKept = (stored: unknown): KeptWork | undefined => keptWork.safeParse(stored).data;

/** Whether something in it is in no file yet. */
export const isUnsaved = ({ edits, saved }: KeptWork): boolean => JSON.stringify(edits) !== JSON.stringify(saved);

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
