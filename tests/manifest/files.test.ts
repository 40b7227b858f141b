import { execFileSync } from "node:child_process";
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync, statSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { OfficeAddinManifest } from "office-addin-manifest";
import { afterAll, describe, expect, test } from "vitest";
import { version } from "../../package.json";
import type { Metadata } from "../../src/build/metadata";
import { dist } from "../build/dist";
import { children, readManifest, resource, type Manifest } from "./manifest-file";

const ORIGIN = "https://example.org/drawers/";

/** A build for an address of its own, as it would be published. */
const published = mkdtempSync(join(tmpdir(), "published-"));
execFileSync(
  process.execPath,
  ["node_modules/webpack/bin/webpack.js", "--mode", "production", "--output-path", published],
  { env: { ...process.env, ADDIN_ORIGIN: "https://example.org/drawers" } },
);
afterAll(() => rmSync(published, { recursive: true }));

const manifest = readManifest(published);

/** Every address that the manifest holds, but for the names of its schemas. */
const addresses = ({ all }: Manifest): string[] =>
  all("*")
    .map((item) => item.getAttribute("DefaultValue") ?? "")
    .filter((value) => /^\w+:/.test(value));

const files = (folder: string): string[] =>
  readdirSync(folder, { recursive: true })
    .map((name) => join(folder, name.toString()))
    .filter((file) => statSync(file).isFile());

describe("a production build", () => {
  test("has every address of the manifest below ADDIN_ORIGIN, at a file of the build", () => {
    expect(addresses(manifest).length).toBeGreaterThan(8);
    for (const address of addresses(manifest)) {
      expect(address.startsWith(ORIGIN), address).toBe(true);
      expect(existsSync(join(published, address.slice(ORIGIN.length))), address).toBe(true);
    }
  });

  test("leads script, metadata and page to the files that hold them", () => {
    const file = (name: string) => resource(manifest, children(manifest.one(name))[0]!.getAttribute("resid")!);
    expect(file("Script")).toBe(`${ORIGIN}functions.js`);
    expect(file("Metadata")).toBe(`${ORIGIN}functions.json`);
    expect(file("Page")).toBe(`${ORIGIN}taskpane.html`);
  });

  test("leads from each function to its help in the guide", () => {
    const { functions } = JSON.parse(readFileSync(join(published, "functions.json"), "utf8")) as Metadata;
    const help = readFileSync(join(published, "guide/functions.html"), "utf8");
    expect(functions.length).toBeGreaterThan(30);
    for (const { name, helpUrl } of functions) {
      expect(helpUrl).toBe(`${ORIGIN}guide/functions.html#${name.toLowerCase()}`);
      expect(help).toContain(`<h3 id="${name.toLowerCase()}">${name}</h3>`);
    }
  });

  test("holds no address of this machine in any file", () => {
    expect(files(published).length).toBeGreaterThan(8);
    const local = /localhost|127\.0\.0\.1|\{\{/;
    expect(files(published).filter((file) => local.test(readFileSync(file, "latin1")))).toEqual([]);
  });

  test("in dist/ too has all its addresses below one public address", () => {
    const origins = addresses(readManifest(dist())).map((address) => new URL(address).origin);
    expect(new Set(origins).size).toBe(1);
    expect(origins[0]).toMatch(/^https:\/\/(?!localhost)/);
  });

  test("bears the version of package.json, in four parts", () => {
    expect(manifest.one("Version").textContent).toBe(`${version}.0`);
  });

  test("can be read by the host's own manifest library", async () => {
    const info = await OfficeAddinManifest.readManifestFile(join(published, "manifest.xml"));
    expect(info).toMatchObject({
      displayName: "Groove & Reveal",
      hosts: ["Workbook"],
      permissions: "ReadWriteDocument",
    });
  });

  test("has icons of the pixel sizes that their names and the manifest tell", () => {
    const icons = files(published).filter((file) => file.endsWith(".png"));
    expect(icons).toHaveLength(4);
    for (const icon of icons) {
      const size = Number(/icon-(\d+)\.png$/.exec(icon)![1]);
      expect(pixels(icon), icon).toEqual([size, size]);
    }
    for (const image of manifest.all("Image").filter((item) => item.hasAttribute("size"))) {
      const address = resource(manifest, image.getAttribute("resid")!);
      expect(address).toBe(`${ORIGIN}icons/icon-${image.getAttribute("size")}.png`);
    }
  });
});

/** Width and height as a PNG's header tells them. */
function pixels(file: string): [number, number] {
  const png = readFileSync(file);
  expect(png.toString("latin1", 1, 4)).toBe("PNG");
  return [png.readUInt32BE(16), png.readUInt32BE(20)];
}
