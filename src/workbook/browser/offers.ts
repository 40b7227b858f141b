import { areKeysLost } from "./lost-keys";

/** Something that a person may choose to do about it. */
interface Choice {
  label: string;
  /** @returns false where it was not done, and is to be offered still */
  go(): Promise<boolean> | boolean;
  /** What is asked before it is done, where it cannot be taken back. */
  sure?: string;
}

/** Lines that wait for a choice, each until one has been made. */
export interface Offers {
  /** @returns takes the line away */
  add(words: string, choices: readonly Choice[]): () => void;
}

/** @param gone told when a line has gone, and the keys perhaps with it */
export function offers(place: HTMLElement, gone: () => void): Offers {
  const list = place.querySelector("ul")!;
  return {
    add(words, choices) {
      const line = document.createElement("li");
      const text = document.createElement("p");
      text.textContent = words;
      const remove = (): void => {
        line.remove();
        place.hidden = list.children.length === 0;
        gone();
      };
      const buttons = choices.map((choice) => button(choice, remove));
      line.append(text, ...buttons, button({ label: "Not now", go: () => true }, remove));
      list.append(line);
      place.hidden = false;
      return remove;
    },
  };
}

function button({ label, go, sure }: Choice, done: () => void): HTMLButtonElement {
  const made = document.createElement("button");
  made.type = "button";
  made.textContent = label;
  let isAsked = sure === undefined;
  made.addEventListener("click", () => {
    if (!isAsked) {
      isAsked = true;
      made.textContent = sure!;
      return;
    }
    made.disabled = true;
    const again = (): void => {
      made.disabled = false;
      // A button that is disabled loses the keys.
      if (areKeysLost()) made.focus();
    };
    void Promise.resolve(go()).then((isDone) => (isDone ? done() : again()), again);
  });
  return made;
}
