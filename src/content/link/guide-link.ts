import type { z } from "zod";
import type { Guide } from "../../model/library.ts";
import type { Read, Reading } from "../reading.ts";
import type { guideSchema } from "../schema/guide-schema.ts";

/** Says where lead is allowed again above less than it is allowed up to. */
function leadRuleInOrder({ value, yaml }: Read<z.output<typeof guideSchema>>, reading: Reading): void {
  const { "allowed-up-to": upTo, "allowed-above": above } = value["lead-rule"];
  if (above === undefined || above >= upTo) return;
  const problem = "lead is allowed again above this, so it cannot be less than allowed-up-to";
  reading.error(yaml.placeOf(["lead-rule", "allowed-above"]), "not-valid", { key: "allowed-above", problem });
}

/** What `guide.yaml` says, by the names that the rest of the house has for it. */
export function guideOf(read: Read<z.output<typeof guideSchema>>, reading: Reading): Guide {
  leadRuleInOrder(read, reading);
  const typed = read.value;
  const lead = typed["lead-rule"];
  return {
    title: typed.title,
    publisher: typed.publisher,
    ...(typed["site-address"] !== undefined && { siteAddress: typed["site-address"] }),
    language: typed.language,
    units: typed.units,
    scaleId: typed["shot-scale"],
    tubId: typed.tub,
    leadRule: {
      place: lead.place,
      allowedUpToG: lead["allowed-up-to"],
      ...(lead["allowed-above"] !== undefined && { allowedAboveG: lead["allowed-above"] }),
      source: lead.source,
      ...(lead.checked !== undefined && { checked: lead.checked }),
    },
    rules: typed.rules,
    contacts: typed.contacts.map(({ when, who, number }) => ({ when, who, ...(number && { number }) })),
    ...(typed["club-number"] !== undefined && { clubNumber: typed["club-number"] }),
    ...(typed["access-point"] !== undefined && { accessPoint: typed["access-point"] }),
    leadBreach: typed["lead-breach"],
    plummets: typed.plummets.map(({ mass, metal }) => ({ massG: mass, metal })),
    conditions: { tempC: typed["water-temperature"], salinity: typed.salinity },
    paper: typed.paper,
    rodLengthMm: typed["rod-length"],
    edition: typed.edition,
    ...(typed.look?.logo !== undefined && { logo: typed.look.logo }),
    ...(typed.look?.colours && { colours: typed.look.colours }),
    ...(typed.visit && { visit: typed.visit }),
  };
}
