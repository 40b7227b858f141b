import { FileFault } from "../../xlsx/fault";
import { Bookkeeper } from "./bookkeeper";
import type { Reply, Request, WorkerFault } from "./messages";

/** Runs beside the page: holds its workbook and works it out, so that the page answers meanwhile and can end it. */
const bookkeeper = new Bookkeeper();

addEventListener("message", ({ data }: MessageEvent<Request>) => {
  const { number, kind, question } = data;
  try {
    const answer = bookkeeper.answer(kind, question);
    send({ number, answer }, answer instanceof Uint8Array ? [answer.buffer] : []);
  } catch (error) {
    send({ number, fault: faultOf(error) });
  }
});

const send = (reply: Reply, transfer: Transferable[] = []): void => self.postMessage(reply, { transfer });

function faultOf(error: unknown): WorkerFault {
  if (error instanceof FileFault) return { message: error.message, ofFile: true };
  return { message: error instanceof Error ? `${error.name}: ${error.message}` : String(error), ofFile: false };
}
