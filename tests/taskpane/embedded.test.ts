// @vitest-environment happy-dom
import { afterEach, beforeEach, expect, test } from "vitest";
import { connectEmbedded } from "../../src/taskpane/host/embedded";
import { HostFault, type Host } from "../../src/taskpane/host/host";
import { createPane } from "../../src/taskpane/pane";
import { FakeHost } from "./fake-host";
import { GROUPS, GUIDE, openPage, textOf } from "./page";

let host: FakeHost;
beforeEach(() => {
  host = new FakeHost();
});
afterEach(() => {
  delete window.spreadsheetHost;
});

test("a page around the pane that gives no host is none of ours", async () => {
  expect(await connectEmbedded()).toBeUndefined();
});

test("the page around the pane gives what it stands beside", async () => {
  window.spreadsheetHost = Promise.resolve(host);
  const connected = (await connectEmbedded())!;
  expect(connected).toMatchObject({ name: "Fake", can: host.can });
  await connected.insertFormula("=1");
  expect(await connected.selection()).toEqual({ address: "Sheet1!B2", formula: "=1", value: "=1" });
});

test("a fault made by that page's own classes is known as one", async () => {
  const refusing: Host = Object.assign(host, {
    insertFormula: () =>
      Promise.reject(Object.assign(new Error("editing"), { name: "HostFault", code: "editing", detail: "F2" })),
  });
  window.spreadsheetHost = Promise.resolve(refusing);
  const refused = (await connectEmbedded())!.insertFormula("=1").catch((fault: unknown) => fault);
  expect(await refused).toBeInstanceOf(HostFault);
  expect(await refused).toMatchObject({ code: "editing", detail: "F2" });
});

test("the sentence behind an error stands beside the selected cell's name, and goes with it", async () => {
  const pane = createPane(openPage(), GROUPS, GUIDE);
  host.selection = async () => ({
    address: "Job!B2",
    formula: "=DRAWER.BOXWIDTH(1)",
    value: "#VALUE!",
    message: "It is <b>narrow</b>.",
  });
  await pane.connect(host);
  expect(textOf("place")).toBe("Selected cell: Job!B2#VALUE! It is <b>narrow</b>.");
  expect(document.querySelector("#place b")).toBeNull();
  host.selection = async () => ({ address: "Job!B3", formula: "", value: "" });
  await host.select("Job!B3");
  expect(textOf("place")).toBe("Selected cell: Job!B3");
});
