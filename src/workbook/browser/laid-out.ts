import { writeWorkbook } from "../author/index";
import { benchJob, newJob, type Choices } from "../new-job/index";
import { EXAMPLE_FILE } from "./example/names";
import type { KeptWork } from "./kept";

const laidOut = (name: string, choices: Choices): KeptWork => ({
  name,
  bytes: writeWorkbook(newJob(choices)),
  edits: [],
  saved: [],
});

export const example = (): KeptWork => laidOut(EXAMPLE_FILE, benchJob("in"));

export const ownJob = (choices: Choices): KeptWork => laidOut("my-job.xlsx", choices);
