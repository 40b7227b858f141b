import { progressOf } from "./progress-of";

/** Searches beside the page until it is ended: what it found last is the answer. */
addEventListener("message", ({ data }: MessageEvent<unknown[]>) => {
  for (const progress of progressOf(data)) self.postMessage(progress);
});
