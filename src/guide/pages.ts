/** A page of the guide: its file's name in `pages/`, without the ending, and what a link to it says. */
export interface GuidePage {
  name: string;
  title: string;
}

/** Where a page of the guide is served, from where the pane is. */
export const pageAddress = (name: string): string => `guide/${name}.html`;

/** The same of a function's help. */
export const functionHelp = (name: string): string => `${pageAddress("functions")}#${name.toLowerCase()}`;

/** The pages of the guide, in the order to read them. */
export const GUIDE_PAGES = [
  { name: "start", title: "Start" },
  { name: "measure", title: "Measure" },
  { name: "tables", title: "Tables" },
  { name: "standards", title: "Standards" },
  { name: "functions", title: "Functions" },
  { name: "slides", title: "Slides and runners" },
  { name: "sheets", title: "Sheets and cuts" },
  { name: "money", title: "Money" },
  { name: "loads", title: "Wood and loads" },
  { name: "cautions", title: "Cautions" },
  { name: "where-it-works", title: "Where it works" },
  { name: "native-functions", title: "Native functions" },
  { name: "drawings", title: "Drawings" },
  { name: "words", title: "Words" },
] as const satisfies readonly GuidePage[];
