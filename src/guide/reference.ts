/** What the guide's pages hold for a search: read from their text by the build, so that nothing is said twice. */
export interface GuideReference {
  words: GuideTerm[];
  /** Headings and names of the tables that a person types. */
  headings: (GuideTerm & { table: string })[];
  sections: GuideSection[];
  /** What others call it, and the names that it has here. */
  elsewhere: [said: string, here: string[]][];
}

/** A row of a table in which the guide explains words. */
export interface GuideTerm {
  /** As it is written: `pull, standoff`. */
  label: string;
  names: string[];
  meaning: string;
  /** Where it stands. */
  address: string;
}

/** A heading of a page and how the text beneath it begins; the page's own heading has no title. */
export interface GuideSection {
  page: string;
  title?: string;
  text: string;
  address: string;
}
