/** Where the development server serves the add-in. */
export const DEVELOPMENT_ORIGIN = "https://localhost:3000/";

/**
 * Stands in for the public address of a production build that was given none. The domain `.example` is reserved and
 * leads nowhere, so such a build can be examined and tested, but nobody can take it for one that is ready to publish.
 */
export const PLACEHOLDER_ORIGIN = "https://groove-and-reveal.example/";

/**
 * The address under which the built files will be found, always with a slash at its end.
 * @param asked the environment's ADDIN_ORIGIN
 * @param production whether the build is meant for others
 */
export function addinOrigin(asked: string | undefined, production: boolean): string {
  if (!production) return DEVELOPMENT_ORIGIN;
  if (asked === undefined || asked.trim() === "") return PLACEHOLDER_ORIGIN;
  const url = URL.parse(asked.trim());
  if (!url)
    throw new Error(`ADDIN_ORIGIN is "${asked}", which is no address. Write it as https://example.org/drawers/.`);
  if (url.protocol !== "https:") throw new Error(`ADDIN_ORIGIN is "${asked}". Hosts load add-ins over https only.`);
  if (LOCAL.test(url.hostname)) throw new Error(`ADDIN_ORIGIN is "${asked}", which others cannot reach.`);
  if (url.search || url.hash || url.username)
    throw new Error(`ADDIN_ORIGIN is "${asked}". Leave out all but host and path.`);
  return url.href.endsWith("/") ? url.href : `${url.href}/`;
}

const LOCAL = /^(localhost|127(\.\d+){3}|\[::1\])$|\.localhost$/;
