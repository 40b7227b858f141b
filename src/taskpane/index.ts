import { connectEmbedded } from "./host/embedded";
import { connectOffice } from "./host/office";
import type { Host } from "./host/host";
import { createPane } from "./pane";
import type { FunctionGroup } from "./reference";

/** Put in place of this name by the build, which reads it from the functions' doc comments. */
declare const FUNCTION_REFERENCE: FunctionGroup[];

const pane = createPane(document, FUNCTION_REFERENCE);

// The list stands before the host's library has loaded, or where it cannot be had at all.
addEventListener("load", () => void connect().then(pane.connect));

const connect = async (): Promise<Host | undefined> => (await connectEmbedded()) ?? connectOffice();
