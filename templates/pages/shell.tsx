import type { Child } from "../../src/markup/jsx-runtime.ts";
import { sitePaths } from "../../src/model/addresses.ts";
import { hasPage } from "../../src/model/has-page.ts";
import { hasSafety, type Section, sections, type View } from "./view.ts";

/** Only our own files, nothing inline: a page cannot be made to run or fetch anything else. */
const contentSecurityPolicy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self'",
  "font-src 'self'",
  "connect-src 'self'",
  "manifest-src 'self'",
  "worker-src 'self'",
  "form-action 'self'",
  "base-uri 'none'",
].join("; ");

interface ShellProps {
  readonly view: View;
  readonly title: string;
  readonly description: string;
  readonly section?: Section;
  readonly scripts: readonly string[];
  readonly preview?: string;
  readonly isUnlisted?: boolean;
  readonly children?: Child;
}

/** A whole document: head, menu, the page itself and the list of all pages at its foot. */
export function Shell(props: ShellProps) {
  const { view, title, description, section, scripts, preview, isUnlisted, children } = props;
  const { library, say, href, path } = view;
  const { guide } = library;
  const address = view.address(path);
  const previewAddress = preview && view.address(preview);
  const isHome = path === sitePaths.home;
  return (
    <html lang={guide.language}>
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={contentSecurityPolicy} />
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <title>{isHome ? title : `${title} · ${guide.title}`}</title>
        <meta name="description" content={description} />
        {isUnlisted && <meta name="robots" content="noindex" />}
        <meta name="color-scheme" content="light dark" />
        <meta name="theme-color" content={view.themeColour} />
        <meta property="og:title" content={title} />
        <meta property="og:description" content={description} />
        <meta property="og:type" content={isHome ? "website" : "article"} />
        {address && <meta property="og:url" content={address} />}
        {previewAddress && <meta property="og:image" content={previewAddress} />}
        {address && <link rel="canonical" href={address} />}
        <link rel="stylesheet" href={href(sitePaths.asset("site.css"))} />
        <link rel="icon" type={view.icon.type} href={href(view.icon.path)} />
        <link rel="manifest" href={href("site/manifest.webmanifest")} />
        {guide.siteAddress && (
          <link
            rel="alternate"
            type="application/atom+xml"
            title={guide.title}
            href={href("site/feed.xml")}
          />
        )}
        {["page.js", ...scripts].map((name) => (
          <script defer src={href(sitePaths.asset(name))} />
        ))}
      </head>
      <body>
        <a class="skip" href="#main">
          {say("skip")}
        </a>
        <header class="masthead">
          <Brand view={view} />
          <Menu view={view} section={section} />
        </header>
        <main id="main" tabindex="-1">
          {children}
        </main>
        <Foot view={view} />
      </body>
    </html>
  );
}

/** Mark and title lead home; a guide that writes its head itself has that beside the mark, in place of the title. */
function Brand({ view }: { view: View }) {
  const { library, href, logo } = view;
  const { title } = library.guide;
  const own = library.templates.get("head");
  const mark = logo ? <Logo view={view} logo={logo} /> : <span class="brand-float" aria-hidden="true" />;
  const brand = (
    <a
      class="brand"
      href={href(sitePaths.home)}
      aria-label={own && title}
      aria-current={view.path === sitePaths.home ? "page" : undefined}
    >
      {mark}
      {!own && title}
    </a>
  );
  if (!own) return brand;
  return (
    <div class="brand-beside">
      {brand}
      <div>{view.markdown(own, { idPrefix: "head-" })}</div>
    </div>
  );
}

/** The title stands beside it, so that it has nothing to say itself. */
function Logo({ view, logo }: { view: View; logo: NonNullable<View["logo"]> }) {
  return (
    <img class="brand-logo" src={view.href(logo.path)} width={logo.widthPx} height={logo.heightPx} alt="" />
  );
}

const menuTargets: Record<Section, string> = {
  lessons: sitePaths.lessons,
  rigs: sitePaths.rigs,
  floats: sitePaths.floats,
  safety: sitePaths.safety,
  search: sitePaths.search,
};

function Menu({ view, section }: { view: View; section?: Section }) {
  const isThere = (name: Section) =>
    name === "safety" ? hasSafety(view) : name !== "lessons" || view.library.lessons.length > 0;
  return (
    <nav class="menu" aria-label={view.say("menu.name")}>
      <ul>
        {sections.filter(isThere).map((name) => (
          <li>
            <a href={view.href(menuTargets[name])} aria-current={currentMark(view.path, name, section)}>
              {view.say(`menu.${name}`)}
            </a>
          </li>
        ))}
      </ul>
    </nav>
  );
}

function currentMark(path: string, name: Section, section?: Section): string | undefined {
  if (path === menuTargets[name]) return "page";
  return section === name ? "true" : undefined;
}

/** A guide may write all of it itself but its last lines: whom the guide is no stand-in for, and whose work it holds. */
function Foot({ view }: { view: View }) {
  const { say, href, library } = view;
  const { guide } = library;
  const own = library.templates.get("foot");
  return (
    <footer class="foot">
      {own ? view.markdown(own, { idPrefix: "foot-" }) : <PagesAndAddress view={view} />}
      <p>{say("foot.not-a-coach")}</p>
      <p>
        {say("foot.imprint", {
          publisher: guide.publisher,
          edition: view.figures.date(guide.edition),
        })}{" "}
        <a href={href(sitePaths.licencePage)}>{say("foot.licences")}</a>
      </p>
    </footer>
  );
}

function PagesAndAddress({ view }: { view: View }) {
  const { say, href, library } = view;
  const { guide } = library;
  const links: (readonly [string, string])[] = [
    [sitePaths.home, say("menu.home")],
    ...(library.lessons.length > 0 ? [[sitePaths.lessons, say("menu.lessons")] as const] : []),
    [sitePaths.rigs, say("menu.rigs")],
    ...(hasPage(library, "swims") ? [[sitePaths.swims, say("swims.title")] as const] : []),
    [sitePaths.floats, say("menu.floats")],
    [sitePaths.shot, say("menu.shot")],
    [sitePaths.knots, say("menu.knots")],
    [sitePaths.baits, say("menu.baits")],
    ...(hasPage(library, "fish") ? [[sitePaths.fish, say("fish.title")] as const] : []),
    ...(hasPage(library, "troubles") ? [[sitePaths.troubles, say("troubles.title")] as const] : []),
    ...(hasPage(library, "glossary") ? [[sitePaths.glossary, say("glossary.title")] as const] : []),
    ...library.pages.map((page) => [sitePaths.page(page.id), page.title] as const),
    [sitePaths.tryIt, say("try.title")],
    [sitePaths.printables, say("menu.printables")],
    [sitePaths.search, say("menu.search")],
    [sitePaths.onThisPhone, say("on-this-phone.title")],
  ];
  return (
    <>
      <nav aria-label={say("foot.name")}>
        <ul>
          {links.map(([target, words]) => (
            <li>
              <a href={href(target)} aria-current={view.path === target ? "page" : undefined}>
                {words}
              </a>
            </li>
          ))}
        </ul>
      </nav>
      {guide.visit && (
        <address>
          {[guide.visit.address, ...guide.visit.hours].map((line) => (
            <span>{line}</span>
          ))}
        </address>
      )}
    </>
  );
}
