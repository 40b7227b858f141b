/**
 * The pane's page as it stands beside the grid: without the spreadsheet program's library, without the functions'
 * bundle, which the grid has, and without a policy of its own, which the server gives to every file.
 */
export function panePage(page: string): string {
  const without = (text: string, what: RegExp): string => {
    const shorter = text.replace(what, "");
    if (shorter === text) throw new Error(`The pane's page has changed: it holds nothing like ${what}.`);
    return shorter;
  };
  const ours = [EXTERNAL_SCRIPTS, FUNCTIONS_SCRIPT, POLICY, COMMENTS].reduce(without, page);
  return ours
    .replaceAll(/\?v=\{\{version\}\}/g, "")
    .replace(/src="taskpane\.js"/, 'src="pane.js" type="module"')
    .replaceAll(/icons\/icon-\d+\.png/g, "icon.svg");
}

const EXTERNAL_SCRIPTS = /\s*<script[^>]*src="https:[^>]*><\/script>/g;
const FUNCTIONS_SCRIPT = /\s*<script[^>]*src="functions\.js[^>]*><\/script>/g;
const POLICY = /\s*<meta\s+http-equiv="Content-Security-Policy"[^>]*>/g;
const COMMENTS = /\s*<!--.*?-->/gs;
