import rehypeStringify from "rehype-stringify";
import { unified } from "unified";
import type { Child } from "../markup/jsx-runtime.ts";
import type { OutputFile } from "../markup/output.ts";
import { publicAddress, sitePaths } from "../model/addresses.ts";
import type { SiteInput } from "./input.ts";
import type { Page } from "./page.ts";
import { toHast } from "./to-hast.ts";

const writer = unified().use(rehypeStringify, { closeSelfClosing: true, characterReferences: {} });

/**
 * What machines that visit a site ask for. The site map and the feed need to know where the site is served, so without an
 * address there are none.
 */
export function listings(pages: readonly Page[], input: SiteInput): OutputFile[] {
  const { siteAddress } = input.library.guide;
  if (siteAddress === undefined) return [robots()];
  return [
    robots(publicAddress("site/sitemap.xml", siteAddress)),
    { path: "site/sitemap.xml", content: xml(siteMap(pages, siteAddress, input)) },
    { path: "site/feed.xml", content: xml(feed(siteAddress, input)) },
  ];
}

/** Source: RFC 9309; the line for the site map is the sitemaps.org protocol's. */
function robots(siteMap?: string): OutputFile {
  const lines = ["User-agent: *", "Allow: /", ...(siteMap === undefined ? [] : ["", `Sitemap: ${siteMap}`])];
  return { path: "site/robots.txt", content: `${lines.join("\n")}\n` };
}

function xml(tree: Child): string {
  const children = toHast(tree);
  return `<?xml version="1.0" encoding="UTF-8"?>\n${writer.stringify({ type: "root", children })}\n`;
}

/** Source: the sitemaps.org protocol 0.9. */
function siteMap(pages: readonly Page[], siteAddress: string, { library }: SiteInput) {
  return (
    <urlset xmlns="http://www.sitemaps.org/schemas/sitemap/0.9">
      {pages
        .filter(({ path, isUnlisted }) => path !== sitePaths.notFound && !isUnlisted)
        .map(({ path }) => (
          <url>
            <loc>{publicAddress(path, siteAddress)}</loc>
            <lastmod>{library.guide.edition}</lastmod>
          </url>
        ))}
    </urlset>
  );
}

/** Source: RFC 4287, the Atom format. */
function feed(siteAddress: string, { library: { guide, changes } }: SiteInput) {
  const home = publicAddress("site/index.html", siteAddress);
  const newest = changes[0]?.date ?? guide.edition;
  return (
    <feed xmlns="http://www.w3.org/2005/Atom" xml:lang={guide.language}>
      <id>{home}</id>
      <title>{guide.title}</title>
      <updated>{atMidnight(newest)}</updated>
      <author>
        <name>{guide.publisher}</name>
      </author>
      <link rel="alternate" href={home} />
      <link rel="self" href={publicAddress("site/feed.xml", siteAddress)} />
      {changes.map(({ date, title, summary, page }) => (
        <entry>
          <id>{`${publicAddress(`site/${page}`, siteAddress)}#${date}`}</id>
          <title>{title}</title>
          <updated>{atMidnight(date)}</updated>
          <link rel="alternate" href={publicAddress(`site/${page}`, siteAddress)} />
          <summary>{summary}</summary>
        </entry>
      ))}
    </feed>
  );
}

function atMidnight(date: string): string {
  return `${date}T00:00:00Z`;
}
