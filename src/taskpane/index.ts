import type { GuideReference } from "../guide/index";
import { connectEmbedded } from "./host/embedded";
import { holdCalls, whenFunctionsLack } from "./host/late-functions";
import { connectOffice } from "./host/office";
import type { Host } from "./host/host";
import { createPane } from "./pane";
import type { FunctionGroup } from "./reference";

/** Put in place of this name by the build, which reads it from the functions' doc comments. */
declare const FUNCTION_REFERENCE: FunctionGroup[];
/** Likewise, from the guide's pages. */
declare const GUIDE_REFERENCE: GuideReference;

// Before the host's library, which comes next.
holdCalls();

// The list stands before that library has loaded, or where it cannot be had at all.
const pane = createPane(document, FUNCTION_REFERENCE, GUIDE_REFERENCE);

// Not once all has loaded: what the functions' results look like must not wait for a late icon.
document.addEventListener("DOMContentLoaded", () => {
  void connect().then(pane.connect);
  whenFunctionsLack(pane.tellLacking);
});

const connect = async (): Promise<Host | undefined> => (await connectEmbedded()) ?? connectOffice();
