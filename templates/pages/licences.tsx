import { sitePaths } from "../../src/model/addresses.ts";
import type { Licence } from "../../src/model/licence.ts";
import { PageHead } from "./page-head.tsx";
import type { View } from "./view.ts";

/** The works of others that the site ships, each with its licence in full. */
export function LicencesPage({
  view: { say, href },
  licences,
}: {
  view: View;
  licences: readonly Licence[];
}) {
  return (
    <>
      <PageHead title={say("licences.title")} lead={say("licences.lead")}>
        <p>
          <a href={href(sitePaths.licences)}>{say("licences.as-data")}</a>
        </p>
      </PageHead>
      {licences.map(({ name, version, terms, text }) => (
        <section>
          <h2>
            {name} {version}
          </h2>
          <p>{terms}</p>
          {text !== "" && <pre class="licence">{text}</pre>}
        </section>
      ))}
    </>
  );
}
