import { Answerer, type Batch } from "./batch";
import { Book, type SheetSpec } from "./book";

/** How the played program is set up; a test hands it over as data. */
export interface Setup {
  /** Requirement sets by name, in small letters, and the version that the program has. */
  sets: Record<string, string>;
  sheets?: SheetSpec[];
  /** A person is typing into a cell as the pane starts. */
  isEditing?: boolean;
  /** The size of a batch, in characters, beyond which the program refuses it. */
  batchLimit?: number;
  locale?: string;
  /** Sent the moment the runtime says that it takes calls, as on opening a workbook. */
  calls?: Sent[];
}

/** What a call came to: its value, or what the program would show in its place. */
export interface Answered {
  ok: boolean;
  value: unknown;
  code?: number;
}

/** A call of a custom function, as the program sends it. */
export interface Sent {
  id: number;
  name: string;
  values: readonly unknown[];
  /** 4: errors come as objects; 8: values come with their type. */
  flags: number;
  address: string;
  parameterAddresses?: readonly string[];
}

/** The played program, but for the wire: takes batches, gives answers, keeps what custom functions gave. */
export class Program {
  readonly book: Book;
  readonly results = new Map<number, Answered>();
  /** Milliseconds of this page's clock at which the runtime said that it takes calls. */
  readyAt: number | undefined;
  private readonly answerer: Answerer;

  constructor(readonly setup: Setup) {
    this.book = new Book(setup.sheets);
    this.book.isEditing = setup.isEditing ?? false;
    const services: Record<string, object> = {
      "": this.book,
      "Microsoft.ExcelServices.CustomFunctions": this.functions,
    };
    this.answerer = new Answerer((name) => services[name] ?? OTHER_SERVICES);
  }

  /** @returns the answer's text, or the number of an error of the platform */
  take(body: string): string | number {
    if (this.book.isEditing) return IN_CELL_EDIT_MODE;
    if (body.length > (this.setup.batchLimit ?? Infinity)) return BATCH_TOO_LARGE;
    return JSON.stringify(this.answerer.answer(JSON.parse(body) as Batch));
  }

  /** Calls, in the shape of the wire. */
  static entries = (calls: readonly Sent[]): unknown[][] =>
    calls.map(({ id, name, values, address, flags, parameterAddresses }) => {
      const call = [id, name, values, address, flags, ...(parameterAddresses ? [parameterAddresses] : [])];
      return [1, 1000, "", JSON.stringify(call), id];
    });

  /** That sheets were worked out anew, in the shape of the wire. */
  calculated(): unknown[][] {
    const { sheets, tellsCalculated } = this.book;
    if (!tellsCalculated) return [];
    return sheets.map(({ Id }, i) => [
      EVENT,
      CALCULATED,
      "Workbook",
      JSON.stringify({ worksheetId: Id, address: "A1" }),
      i,
    ]);
  }

  private readonly functions = {
    _SetOsfControlContainerReadyForCustomFunctions: () => {
      this.readyAt = performance.now();
      if (this.setup.calls) setTimeout(() => window.sendCalls(this.setup.calls!));
    },
    _GetEnabledFeatures: () => [],
    SetInvocationArrayResults: (list: [number, boolean, unknown, number?][]) => {
      for (const [id, ok, value, code] of list) {
        this.results.set(id, { ok, value, ...(ok ? {} : { code: Number(code) }) });
      }
    },
  };
}

/** What the runtime tells other parts of the program of itself. */
const OTHER_SERVICES = { NotifyActionHandlerReady: () => undefined };

/** Of messages, and of events. */
const [EVENT, CALCULATED] = [65_536, 16];

const IN_CELL_EDIT_MODE = 5004;
const BATCH_TOO_LARGE = 5103;

/** Where the page's side and the test's side meet. */
declare global {
  interface Window {
    program: Program;
    sendCalls: (calls: readonly Sent[]) => void;
    changeSelection: (sheet: number, row: number, column: number) => void;
    /** Every sheet has been worked out anew. */
    recalculated: () => void;
  }
}
