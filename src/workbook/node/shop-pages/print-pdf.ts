import { chromium, type Browser, type LaunchOptions } from "playwright-core";
import { FileFault } from "../../xlsx/fault";
import type { ShopArguments } from "./arguments";

/** Has a browser print the pages. @throws FileFault where none is installed */
export async function printPdf(html: string, paper: ShopArguments["paper"]): Promise<Uint8Array> {
  const browser = await someBrowser();
  try {
    const page = await browser.newPage({ offline: true });
    await page.setContent(html, { waitUntil: "load" });
    return await page.pdf({ format: paper });
  } finally {
    await browser.close();
  }
}

const NONE =
  "No browser that could print was found. Install Chromium, Chrome or Edge, or set CHROMIUM to the path of one; -o PAGES.html needs none.";

async function someBrowser(): Promise<Browser> {
  const own = process.env["CHROMIUM"];
  const places: LaunchOptions[] = own
    ? [{ executablePath: own }]
    : [
        ...["/usr/bin/chromium", "/usr/bin/chromium-browser"].map((executablePath) => ({ executablePath })),
        ...["chrome", "msedge", "chromium"].map((channel) => ({ channel })),
      ];
  // Only our own text is shown, and nothing is fetched; the system's administrator has no sandbox.
  const args = process.getuid?.() === 0 ? ["--no-sandbox"] : [];
  for (const place of places) {
    const browser = await chromium.launch({ ...place, args }).catch(() => undefined);
    if (browser) return browser;
  }
  throw new FileFault(NONE);
}
