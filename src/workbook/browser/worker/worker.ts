import { SheetFault } from "../../edit/index";
import { FileFault } from "../../xlsx/fault";
import { Bookkeeper } from "./bookkeeper";
import type { Reply, Request, WorkerFault } from "./messages";

/** Runs beside the page: holds its workbook and works it out, so that the page answers meanwhile and can end it. */
const bookkeeper = new Bookkeeper();

addEventListener("message", ({ data }: MessageEvent<Request>) => {
  const { number, kind, question } = data;
  try {
    // Nothing is handed over for good: a file that has not changed is saved as the very bytes that it was opened from.
    send({ number, answer: bookkeeper.answer(kind, question) });
  } catch (error) {
    send({ number, fault: faultOf(error) });
  }
});

const send = (reply: Reply): void => self.postMessage(reply);

function faultOf(error: unknown): WorkerFault {
  if (error instanceof FileFault) return { message: error.message, of: "file" };
  if (error instanceof SheetFault) return { message: error.message, of: "sheets" };
  return { message: error instanceof Error ? `${error.name}: ${error.message}` : String(error), of: "page" };
}
