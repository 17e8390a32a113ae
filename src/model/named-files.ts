/**
 * Files that go with a page, below the site: rigs' figures and pictures of the guide's own. Build and phone read them off
 * the page in the same way.
 */
export function namedFiles(html: string): ReadonlySet<string> {
  return new Set(html.match(/\b(?:data|images)\/[^\s"',?#]+/g));
}
