import { OfficeMockObject } from "office-addin-mock";
import { afterEach, describe, expect, test, vi } from "vitest";
import { connectOffice } from "../../src/taskpane/host/office";

afterEach(() => {
  vi.unstubAllGlobals();
  globalThis.drawerHost = undefined;
});

const supporting = (...sets: string[]) => ({
  HostType: { Excel: "Excel" },
  onReady: async () => ({ host: "Excel" }),
  context: { requirements: { isSetSupported: (set: string, version: string) => sets.includes(`${set} ${version}`) } },
});

const ALL = ["CustomFunctionsRuntime 1.4", "ExcelApi 1.7", "ExcelApi 1.19"];

/** A workbook whose active cell holds a formula; `run` does what the host's does, or throws `fault`. */
function excel(formula: string, fault?: { code: string; message: string }) {
  const handlers: (() => Promise<void>)[] = [];
  const mock = new OfficeMockObject({
    context: {
      workbook: {
        cell: { address: "Sheet1!B2", formulas: [[formula]], values: [[formula]] },
        getActiveCell() {
          return (this as unknown as { cell: unknown }).cell;
        },
        onSelectionChanged: {
          add(handler: () => Promise<void>) {
            handlers.push(handler);
            return { context: {}, remove: () => handlers.splice(handlers.indexOf(handler), 1) };
          },
        },
      },
    },
    run: async function (...given: unknown[]) {
      if (fault) throw fault;
      return (given.at(-1) as (context: unknown) => unknown)((this as unknown as { context: unknown }).context);
    },
  }) as never as { context: { workbook: { cell: { formulas: unknown } } } };
  return { mock, handlers };
}

describe("connectOffice", () => {
  test("finds nothing where the host's library did not load, or the page is open in a browser", async () => {
    expect(await connectOffice()).toBeUndefined();
    vi.stubGlobal("Office", { ...supporting(), onReady: async () => ({ host: null }) });
    expect(await connectOffice()).toBeUndefined();
    expect(globalThis.drawerHost).toBeUndefined();
  });

  test.each([
    [ALL, { showsNumberFormats: true, formattedType: "Double" }],
    [["CustomFunctionsRuntime 1.4"], { showsNumberFormats: true, formattedType: "FormattedNumber" }],
    [["ExcelApi 1.7"], { showsNumberFormats: false }],
  ])("tells the cell functions how a result may bring a number format: %j", async (sets, told) => {
    vi.stubGlobal("Office", supporting(...sets));
    await connectOffice();
    expect(globalThis.drawerHost).toMatchObject(told);
  });

  test("reports what an old host cannot do", async () => {
    vi.stubGlobal("Office", supporting());
    const host = await connectOffice();
    expect(host!.can).toEqual({ insert: false, tellSelection: false, showNumberFormats: false });
  });
});

describe("the host Excel", () => {
  const connected = async (formula: string, fault?: { code: string; message: string }) => {
    const { mock, handlers } = excel(formula, fault);
    vi.stubGlobal("Office", supporting(...ALL));
    vi.stubGlobal("Excel", mock);
    return { host: (await connectOffice())!, mock, handlers };
  };

  test("tells the selected cell's address, formula and value", async () => {
    const { host } = await connected("=A1");
    expect(await host.selection()).toEqual({ address: "Sheet1!B2", formula: "=A1", value: "=A1" });
  });

  test("writes a formula into the selected cell", async () => {
    const { host, mock } = await connected("");
    await host.insertFormula("=DRAWER.BOXWIDTH(24)");
    expect(mock.context.workbook.cell.formulas).toEqual([["=DRAWER.BOXWIDTH(24)"]]);
  });

  test("tells of every change of the selection until it is told to stop", async () => {
    const { host, handlers } = await connected("5");
    const heard: string[] = [];
    const stop = await host.onSelectionChanged(({ address }) => heard.push(address));
    await handlers[0]!();
    expect(heard).toEqual(["Sheet1!B2"]);
    await stop();
    expect(handlers).toEqual([]);
  });

  test.each([
    ["InvalidOperationInCellEditMode", "editing"],
    ["AccessDenied", "protected"],
    ["GeneralException", "refused"],
  ])("throws %s as the fault %s, with what the host said", async (code, fault) => {
    const { host } = await connected("", { code, message: "The host said so." });
    await expect(host.insertFormula("=1")).rejects.toMatchObject({ code: fault, detail: "The host said so." });
  });
});
