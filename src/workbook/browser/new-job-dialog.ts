import { jobForm } from "../../taskpane/new-job/job-form";
import type { Choices } from "../new-job/index";

/** Asks what a new job is begun with, and begins it where that is wanted. */
export function askForJob(dialog: HTMLDialogElement, begin: (choices: Choices) => void): void {
  const form = dialog.querySelector("form")!;
  const { fields, choices, fault } = jobForm();
  form.querySelector("#new-job-fields")!.replaceChildren(...fields);
  const wrong = form.querySelector<HTMLElement>("[role=alert]")!;
  wrong.hidden = true;
  form.onsubmit = (event) => {
    if ((event.submitter as HTMLButtonElement).value !== "begin") return;
    const found = fault();
    wrong.hidden = found === undefined;
    wrong.textContent = found ?? "";
    if (found) event.preventDefault();
    else begin(choices());
  };
  dialog.showModal();
}
