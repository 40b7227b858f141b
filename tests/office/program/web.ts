import { Program, type Setup } from "./program";

/** Plays the program on the web: the page around the add-in's frame, and the messages between the two. */
declare global {
  interface Window {
    startProgram: (setup: Setup, addin: string) => void;
  }
}

interface Message {
  _messageType: number;
  _actionType: number;
  _actionName: string;
  _conversationId: string;
  _correlationId: number;
  _data?: { DdaMethod?: { DispatchId: number }; ArrayData?: unknown[] };
}

const CONVERSATION = "conversation";
const ADDIN = "addin";
const [REQUEST, RESPONSE] = [0, 1];
/** What the platform calls the running of a batch of its object protocol. */
const RUN_BATCH = 93;
const NOT_SUPPORTED = 5007;

window.startProgram = (setup, addin) => {
  const program = (window.program = new Program(setup));
  const frame = document.createElement("iframe");
  const { origin } = new URL(addin);
  /** What the runtime registered for, by the name of the event. */
  const listening = new Map<string, number>();

  const post = (message: object): void =>
    frame.contentWindow!.postMessage(
      JSON.stringify({ _serializerVersion: 1, _origin: location.origin, _messageType: RESPONSE, ...message }),
      origin,
    );
  const answer = (to: Message, data: unknown): void =>
    post({ ...names(to), _data: data, _errorCode: 0, _responseType: 0 });
  const raise = (event: string, data: unknown): void => {
    const _correlationId = listening.get(event);
    if (_correlationId === undefined) return;
    const to = { _actionName: event, _conversationId: CONVERSATION, _correlationId };
    post({ ...to, _data: data, _errorCode: 0, _responseType: 1 });
  };

  addEventListener("message", ({ source, data }) => {
    if (source !== frame.contentWindow || typeof data !== "string") return;
    const message = JSON.parse(data) as Message;
    if (message._messageType !== REQUEST) return;
    const { _actionName: name, _correlationId: id } = message;
    if (name === "ContextActivationManager_getAppContextAsync") return answer(message, context(setup));
    if (name === "executeMethod") return answer(message, run(program, message));
    if (message._actionType === 1) listening.set(name, id);
    answer(message, { Version: 1, Error: 0 });
  });

  window.sendCalls = (calls) => raise("richApiMessage", { ArrayData: Program.entries(calls) });
  window.recalculated = () => raise("richApiMessage", { ArrayData: program.calculated() });
  window.changeSelection = (sheet, row, column) => {
    program.book.active = { sheet, row, column };
    raise("documentSelectionChanged", {});
  };

  // The last part switches custom functions on (2) beside the pane (1).
  const host = ["Excel", "Web", "16.00", setup.locale ?? "en-US", "telemetry", "", "", "3"].join("$");
  const channel = [CONVERSATION, ADDIN, location.origin].join("|");
  frame.name = JSON.stringify({ baseFrameName: ADDIN, hostInfo: host, xdmInfo: channel, serializerVersion: "1" });
  frame.src = `${addin}?_host_Info=${encodeURIComponent(host)}#&_serializer_version=1&_xdm_Info=${channel}`;
  frame.style.cssText = "width: 320px; height: 760px; border: 0";
  frame.setAttribute("sandbox", "allow-scripts allow-forms allow-same-origin allow-popups");
  document.body.append(frame);
};

const names = ({ _actionName, _conversationId, _correlationId }: Message) => ({
  _actionName,
  _conversationId,
  _correlationId,
});

function run(program: Program, { _data: data }: Message): object {
  if (data!.DdaMethod!.DispatchId !== RUN_BATCH) return { Version: 1, Error: NOT_SUPPORTED };
  const answered = program.take(String(data!.ArrayData![4]));
  if (typeof answered === "number") return { Version: 1, Error: answered };
  return { Version: 1, Error: 0, Data: [200, ["CONTENT-TYPE", "application/json"], answered] };
}

/** What the program tells the runtime of itself and of the document. */
const context = ({ sets, locale = "en-US" }: Setup): object => ({
  _id: ADDIN,
  _appName: 16,
  _appVersion: 16,
  _appMinorVersion: 0,
  _appUILocale: locale,
  _dataLocale: locale,
  _docUrl: "https://example.sharepoint.com/Book.xlsx",
  _clientMode: 1,
  _settings: [],
  _reason: "documentOpened",
  _osfControlType: 0,
  _eToken: "",
  _correlationId: "correlation",
  _appInstanceId: "instance",
  _requirementMatrix: JSON.stringify(sets),
  _hostCustomMessage: null,
  _hostFullVersion: "16.0.20000.10000",
  _clientWindowHeight: 800,
  _clientWindowWidth: 320,
  _addinName: "Groove & Reveal",
  _appDomains: [],
  _featureGates: {},
  _initialDisplayMode: 2,
});
