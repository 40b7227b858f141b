export const EXAMPLE_FILE = "parts-bench.xlsx";
export const EXAMPLE_OPENED = "parts-bench.json";
