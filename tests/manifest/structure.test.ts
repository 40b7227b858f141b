import { describe, expect, test } from "vitest";
import { dist } from "../build/dist";
import { children, names, readManifest, resource } from "./manifest-file";

const manifest = readManifest(dist());
const { root, all, one } = manifest;

describe("manifest.xml, for a host that reads it strictly", () => {
  test("has its elements in the order of the schema", () => {
    expect(names(root)).toEqual(
      (
        "Id Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl " +
        "Hosts Requirements DefaultSettings Permissions VersionOverrides"
      ).split(" "),
    );
    expect(names(one("VersionOverrides"))).toEqual(["Hosts", "Resources"]);
    expect(names(one("Resources"))).toEqual(["Images", "Urls", "ShortStrings", "LongStrings"]);
  });

  test("has runtime, functions and ribbon of the workbook's host in the order of the schema", () => {
    const host = all("Host").find((candidate) => candidate.hasAttribute("xsi:type"))!;
    expect(host.getAttribute("xsi:type")).toBe("Workbook");
    expect(names(host)).toEqual(["Runtimes", "AllFormFactors", "DesktopFormFactor"]);
    expect(names(one("AllFormFactors"))).toEqual(["ExtensionPoint"]);
    expect(names(one("DesktopFormFactor"))).toEqual(["GetStarted", "FunctionFile", "ExtensionPoint"]);
    expect(names(one("GetStarted"))).toEqual(["Title", "Description", "LearnMoreUrl"]);
    const [functions, ribbon] = all("ExtensionPoint");
    expect(functions!.getAttribute("xsi:type")).toBe("CustomFunctions");
    expect(names(functions!)).toEqual(["Script", "Page", "Metadata", "Namespace"]);
    expect(ribbon!.getAttribute("xsi:type")).toBe("PrimaryCommandSurface");
  });

  test("has one button, on the Home tab, that opens the pane", () => {
    expect(one("OfficeTab").getAttribute("id")).toBe("TabHome");
    expect(names(one("Group"))).toEqual(["Label", "Icon", "Control"]);
    expect(names(one("Control"))).toEqual(["Label", "Supertip", "Icon", "Action"]);
    expect(one("Control").getAttribute("xsi:type")).toBe("Button");
    expect(one("Action").getAttribute("xsi:type")).toBe("ShowTaskpane");
    expect(names(one("Action"))).toEqual(["TaskpaneId", "SourceLocation"]);
    for (const icon of all("Icon")) {
      expect(children(icon).map((image) => image.getAttribute("size"))).toEqual(["16", "32", "80"]);
    }
  });

  test("lets runtime, functions, commands and button share one page", () => {
    const page = one("Runtime").getAttribute("resid");
    expect(one("Runtime").getAttribute("lifetime")).toBe("long");
    expect(children(one("Page"))[0]!.getAttribute("resid")).toBe(page);
    expect(one("FunctionFile").getAttribute("resid")).toBe(page);
    expect(children(one("Action"))[1]!.getAttribute("resid")).toBe(page);
    expect(children(one("DefaultSettings"))[0]!.getAttribute("DefaultValue")).toBe(resource(manifest, page!));
  });

  test("names resources that exist, each by an id of at most 32 characters, and uses every one", () => {
    const defined = ["Image", "Url", "String"]
      .flatMap(all)
      .map((item) => item.getAttribute("id"))
      .filter(Boolean);
    const used = all("*")
      .map((item) => item.getAttribute("resid"))
      .filter((id) => id !== null);
    expect(new Set(used)).toEqual(new Set(defined));
    expect(defined).toEqual([...new Set(defined)]);
    expect(defined.filter((id) => id!.length > 32)).toEqual([]);
  });

  test("asks for no more of a host than the release of 2021 offers", () => {
    const sets = all("Set").map((set) => `${set.getAttribute("Name")} ${set.getAttribute("MinVersion")}`);
    expect(sets).toEqual(["CustomFunctionsRuntime 1.1", "SharedRuntime 1.1"]);
  });

  test("shows itself by icons of the documented sizes, 32 and for high resolutions 64 pixels", () => {
    const address = (name: string) => new URL(one(name).getAttribute("DefaultValue")!).pathname;
    expect(address("IconUrl")).toBe("/icons/icon-32.png");
    expect(address("HighResolutionIconUrl")).toBe("/icons/icon-64.png");
  });

  test("names no domain: its own needs none, and its pane opens no other", () => {
    expect(all("AppDomain")).toEqual([]);
  });

  test("asks to read and write the document, and nothing beyond", () => {
    expect(one("Permissions").textContent).toBe("ReadWriteDocument");
  });

  test("keeps texts within the schema's limits", () => {
    const long = (name: string, most: number, value: (text: string) => string = (text) => text) =>
      children(one(name))
        .map((item) => value(item.getAttribute("DefaultValue")!))
        .filter((text) => text.length > most);
    expect(long("ShortStrings", 125)).toEqual([]);
    expect(long("LongStrings", 250)).toEqual([]);
    expect(long("Urls", 2048)).toEqual([]);
    expect(one("ProviderName").textContent!.length).toBeLessThanOrEqual(125);
    expect(one("DisplayName").getAttribute("DefaultValue")!.length).toBeLessThanOrEqual(125);
    const [description] = children(root).filter(({ localName }) => localName === "Description");
    expect(description!.getAttribute("DefaultValue")!.length).toBeLessThanOrEqual(250);
  });

  test("has ids in the shapes that hosts take", () => {
    expect(one("Id").textContent).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-4[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(resource(manifest, one("Namespace").getAttribute("resid")!)).toBe("DRAWER");
    const ids = [one("Group"), one("Control")].map((item) => item.getAttribute("id")!);
    for (const id of [...ids, one("TaskpaneId").textContent!]) expect(id).toMatch(/^[A-Za-z][A-Za-z0-9.]{0,124}$/);
  });
});
