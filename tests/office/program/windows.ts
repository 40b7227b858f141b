import { Program, type Setup } from "./program";

/** Plays the program on Windows: what it puts into the add-in's own page, before anything there runs. */
declare global {
  interface Window {
    programSetup: Setup;
  }
}

const RUN_BATCH = 93;
const NOT_SUPPORTED = 5007;
const [SELECTION_CHANGED, BATCH_MESSAGE] = [2, 33];

const program = (window.program = new Program(window.programSetup));
/** Arrays of the program's own world are wrapped. */
const wrapped = (items: unknown[]) => ({ toArray: () => items });
const handlers = new Map<number, (event: number, data: unknown) => void>();

const context: Record<string, () => unknown> = {
  GetAppType: () => 1,
  GetSolutionRef: () => "addin",
  GetAppVersionMajor: () => 16,
  GetAppVersionMinor: () => 1,
  GetAppUILocale: () => 1033,
  GetAppDataLocale: () => 1033,
  GetDocUrl: () => "C:\\Book.xlsx",
  GetAppCapabilities: () => 1,
  GetActivationMode: () => 2,
  GetControlIntegrationLevel: () => 0,
  GetSolutionToken: () => "",
  GetCorrelationId: () => "correlation",
  GetInstanceId: () => "instance",
  GetTouchEnabled: () => false,
  GetCommerceAllowed: () => true,
  GetSupportedMatrix: () => JSON.stringify(program.setup.sets),
  GetHostCustomMessage: () => null,
  GetHostFullVersion: () => "16.0.20000.10000",
  GetDialogRequirementMatrix: () => undefined,
  GetFeaturesForSolution: () => "{}",
  GetInitialDisplayMode: () => 2,
  GetOsfControlType: () => 0,
  ReadSettings: () => undefined,
  GetSettings: () => ({ Read: () => undefined, Write: () => undefined }),
};

type Callback = (answer: unknown) => void;

const external = {
  GetHostInfo: () => ["Excel", "Win32", "16.01", "en-US", "telemetry", "", "", "3"].join("$"),
  GetContext: () => context,
  GetLoggingAllowed: () => false,
  Execute(id: number, given: unknown[][], callback: Callback) {
    setTimeout(() => callback(id === RUN_BATCH ? run(String(given[0]![4])) : NOT_SUPPORTED));
  },
  RegisterEvent(id: number, _target: unknown, handler: (event: number, data: unknown) => void, callback: Callback) {
    handlers.set(id, handler);
    setTimeout(() => callback(0));
  },
  UnregisterEvent(id: number, _target: unknown, callback: Callback) {
    handlers.delete(id);
    setTimeout(() => callback(0));
  },
};

function run(body: string): unknown {
  const answered = program.take(body);
  if (typeof answered === "number") return answered;
  return wrapped([0, 200, wrapped(["CONTENT-TYPE", "application/json"]), answered]);
}

Object.defineProperty(window, "external", { value: external, configurable: true });

window.sendCalls = (calls) => handlers.get(BATCH_MESSAGE)!(BATCH_MESSAGE, wrapped(Program.entries(calls).map(wrapped)));
window.recalculated = () => handlers.get(BATCH_MESSAGE)!(BATCH_MESSAGE, wrapped(program.calculated().map(wrapped)));
window.changeSelection = (sheet, row, column) => {
  program.book.active = { sheet, row, column };
  handlers.get(SELECTION_CHANGED)?.(SELECTION_CHANGED, wrapped([]));
};
