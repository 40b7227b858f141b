import { SheetFault } from "../../sheets/sheet-edit";
import { FileFault } from "../../xlsx/fault";
import type { Answers, Kind, Questions, Reply, Request, WorkerFault } from "./messages";

/** The worker was ended before it answered. */
export class Stopped extends Error {
  /** @param tookTooLong nobody stopped it; it had worked as long as it may */
  constructor(readonly tookTooLong: boolean) {
    super(tookTooLong ? "It takes too long to work out." : "It was stopped.");
  }
}

/** The page's end of a worker. */
export class WorkerClient {
  private readonly worker = new Worker("worker.js", { type: "module" });
  private readonly waiting = new Map<number, { resolve(answer: never): void; reject(fault: unknown): void }>();
  private asked = 0;
  isAlive = true;

  constructor() {
    this.worker.addEventListener("message", ({ data }: MessageEvent<Reply>) => this.take(data));
    // A worker that has run out of memory, or that never started.
    this.worker.addEventListener("error", (event) => {
      event.preventDefault();
      this.end(new Error(event.message || "What works the workbook out has ended by itself."));
    });
  }

  /** @throws FileFault, SheetFault, Stopped, or an Error that tells what went wrong */
  ask<K extends Kind>(kind: K, question: Questions[K]): Promise<Answers[K]> {
    const number = ++this.asked;
    return new Promise<Answers[K]>((resolve, reject) => {
      this.waiting.set(number, { resolve, reject });
      this.worker.postMessage({ number, kind, question } as Request);
    });
  }

  /** Ends the worker, whatever it is at. */
  end(reason: Error = new Stopped(false)): void {
    this.isAlive = false;
    this.worker.terminate();
    for (const { reject } of this.waiting.values()) reject(reason);
    this.waiting.clear();
  }

  private take(reply: Reply): void {
    const asked = this.waiting.get(reply.number);
    this.waiting.delete(reply.number);
    if ("answer" in reply) asked?.resolve(reply.answer as never);
    else asked?.reject(faultOf(reply.fault));
  }
}

const faultOf = ({ of, message }: WorkerFault): Error =>
  of === "file" ? new FileFault(message) : of === "sheets" ? new SheetFault(message) : new Error(message);
