import type { RangeName, Ranges, ShownBy } from "../host/host";
import { formulaCall, type CallArgument } from "../../shop-pages/index";
import { isDrawn, isOfDrawers, pictureOf, pictureOfOpening, type Picture } from "./picture-of";
import { placeIn } from "./place-in";
import { readArguments } from "./read-arguments";

type Table = RangeName & { sheet: string };

/** Finds what is to be drawn for the selected cell: its row of a table, or the opening that stands in it. */
export class PictureFollower {
  /** The tables of the plan that was drawn last: their cells show its openings, too. */
  private last: { table: Table; args: readonly CallArgument[]; sheet: string } | undefined;

  constructor(private readonly ranges: Ranges) {}

  /**
   * @param address the selected cell's, with its sheet
   * @returns undefined where the cell tells of nothing that could be drawn
   */
  async at(address: string): Promise<Picture | undefined> {
    const shown = await this.ranges.shownBy();
    const call = shown && formulaCall(shown.formula);
    if (shown && call && isDrawn(call.name)) return this.ofCall(call.name, call.args, shown);
    return this.ofInput(address);
  }

  private async ofCall(name: string, args: readonly CallArgument[], { sheet, row }: ShownBy) {
    if (isOfDrawers(name)) {
      const [first] = args;
      this.last = first && "range" in first ? { table: { sheet, ...first.range }, args, sheet } : undefined;
    }
    const read = await readArguments(this.ranges, args, sheet);
    return "why" in read ? read : pictureOf(name, read.raw, row);
  }

  private async ofInput(address: string): Promise<Picture | undefined> {
    if (!this.last) return undefined;
    const { table, args, sheet } = this.last;
    const row = table.isSpilled ? undefined : placeIn(address, table);
    if (row === undefined) return undefined;
    const read = await readArguments(this.ranges, args, sheet);
    return "why" in read ? read : pictureOfOpening(read.raw, row);
  }
}
