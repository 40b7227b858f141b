import { element } from "../element";
import type { Host, Ranges } from "../host/host";
import type { Outcome } from "../insert";
import { faultMessage, MESSAGES } from "../messages";
import { patiently } from "../patiently";
import { FindingsFollower, type Cell, type Findings } from "./follower";

/** The findings on the page. */
export interface FindingsSection {
  /** Lists what is found in the job of the selected cell, and goes on with it as another is selected. */
  follow(host: Host | undefined): Promise<void>;
}

/**
 * Fills `place`, which is hidden as long as no job was looked at.
 * @param say told what came of choosing a finding
 */
export function findingsSection(place: HTMLElement, say: (outcome: Outcome) => void): FindingsSection {
  let shown: Findings | undefined;
  const show = (findings: Findings | undefined, ranges: Ranges): void => {
    // The one that was chosen keeps the keys, for its list stays.
    if (findings === shown) return;
    shown = findings;
    place.hidden = !findings || "why" in findings;
    place.replaceChildren(...(findings && "found" in findings ? list(findings, ranges, say) : []));
  };
  return {
    async follow(host) {
      const ranges = host?.can.tellSelection ? host.ranges : undefined;
      if (!host || !ranges) return;
      const follower = new FindingsFollower(ranges);
      let asked = 0;
      const look = async (): Promise<void> => {
        const turn = ++asked;
        const findings = await follower.at();
        // Another cell may have been selected meanwhile.
        if (turn === asked) show(findings, ranges);
      };
      await patiently(
        async () => {
          await look();
          await host.onSelectionChanged(() => void look().catch(() => show(undefined, ranges)));
        },
        () => show(undefined, ranges),
      );
    },
  };
}

type Found = Exclude<Findings, { why: string }>["found"];

/** Open where they are asked for, or something is wrong; else what was drawn is nearer. */
function list({ found, isAsked }: Exclude<Findings, { why: string }>, ranges: Ranges, say: (outcome: Outcome) => void) {
  const title = element("h2", { id: "findings-title" }, MESSAGES.findings(found.map(({ level }) => level)));
  if (found.length === 0) return [title];
  const isOpen = isAsked || found.some(({ level }) => level === "wrong");
  const items = element("ol", {}, ...found.map((one) => item(one, ranges, say)));
  return [element("details", isOpen ? { open: "" } : {}, element("summary", {}, title), items)];
}

function item({ where, level, finding, remedy, cell }: Found[number], ranges: Ranges, say: (outcome: Outcome) => void) {
  const button = element(
    "button",
    { type: "button", class: "finding" },
    element("span", { class: `level ${level}` }, level),
    " ",
    element("b", {}, where),
    " ",
    finding,
  );
  button.addEventListener("click", () => {
    say({ ok: true, text: "" });
    void choose(ranges, cell, where).then(say);
  });
  return element("li", {}, button, element("p", { class: "remedy" }, remedy));
}

async function choose(ranges: Ranges, cell: Cell | undefined, where: string): Promise<Outcome> {
  if (!cell) return { ok: false, text: MESSAGES.noCell(where) };
  try {
    const isThere = await ranges.select(cell.sheet, cell.address);
    return isThere
      ? { ok: true, text: MESSAGES.chosen(`${cell.sheet}!${cell.address}`) }
      : { ok: false, text: MESSAGES.sheetUnseen(cell.sheet) };
  } catch (thrown) {
    return { ok: false, text: faultMessage(thrown) };
  }
}
