import type { CustomFunction } from "../engine/index";

/** Whatever our functions gave as a length in inches, since the last time it was forgotten. */
export class InchLengths {
  private readonly values = new Set<number>();

  /**
   * The same functions, which note the lengths in inches that they give: results that bring a number format.
   * The engine works with the bare numbers, and so they are known again by their value.
   */
  recorded(functions: Record<string, CustomFunction>): Record<string, CustomFunction> {
    return Object.fromEntries(
      Object.entries(functions).map(([name, call]) => [name, (...args: never[]) => this.noted(call(...args))]),
    );
  }

  has(value: unknown): boolean {
    return typeof value === "number" && this.values.has(value);
  }

  forget(): void {
    this.values.clear();
  }

  private noted(result: unknown): unknown {
    for (const cell of Array.isArray(result) ? result.flat() : [result]) {
      if (typeof cell === "object" && cell !== null && "numberFormat" in cell)
        this.values.add(cell.basicValue as number);
    }
    return result;
  }
}
