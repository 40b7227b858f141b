/**
 * The anchor of a heading, as GitHub makes it, so that one link serves there and in the built pages.
 * @example anchorOf("The table `openings`") // "the-table-openings"
 */
export const anchorOf = (heading: string): string =>
  heading
    .trim()
    .toLowerCase()
    .replace(/[^\p{L}\p{N} _-]/gu, "")
    .replaceAll(" ", "-");

/** A link from one Markdown page to another, or to a picture, as it is between the built pages. */
export const builtLink = (link: string): string =>
  /^\w+:/.test(link) ? link : link.replace(/^\.\.\/pictures\//, "pictures/").replace(/\.md(?=#|$)/, ".html");
