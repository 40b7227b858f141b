import { writeWorkbook } from "../../author/index";
import { benchJob, newJob } from "../../new-job/index";
import { Bookkeeper } from "../worker/bookkeeper";
import { EXAMPLE_FILE, EXAMPLE_OPENED } from "./names";
import { toText } from "./text";

/** The example as files beside the page: its workbook, and what a worker answers when it has opened it. */
export function exampleFiles(): Map<string, Uint8Array> {
  const bytes = writeWorkbook(newJob(benchJob("in")));
  const opened = new Bookkeeper().answer("open", { bytes, edits: [] });
  return new Map([
    [EXAMPLE_FILE, bytes],
    [EXAMPLE_OPENED, new TextEncoder().encode(toText(opened))],
  ]);
}
