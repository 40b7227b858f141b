/** The page's line for what went wrong, and for what was done. */
export interface Notices {
  fault(text: string): void;
  done(text: string): void;
}

/** @param closed told when a person has closed the line, and the keys are gone with it */
export function notices(bar: HTMLElement, closed: () => void = () => undefined): Notices {
  const text = bar.querySelector("p")!;
  const close = bar.querySelector("button")!;
  const say = (kind: string, said: string): void => {
    // Emptied first, so that the same sentence is read out a second time.
    text.textContent = "";
    bar.dataset["kind"] = kind;
    bar.hidden = false;
    text.textContent = said;
  };
  close.addEventListener("click", () => {
    bar.hidden = true;
    closed();
  });
  return { fault: (said) => say("fault", said), done: (said) => say("done", said) };
}
