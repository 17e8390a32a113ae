import { PDFDict, PDFName } from "@cantoo/pdf-lib";
import { entry, type RawPdf } from "../raw-pdf.ts";
import { must, type UaRule } from "./rule.ts";

const language = /^[a-zA-Z]{1,8}(-[a-zA-Z0-9]{1,8})*$/;
const catalogDict = (pdf: RawPdf, key: string) => pdf.catalog.lookupMaybe(PDFName.of(key), PDFDict);

/** The file as a whole: header, metadata, language, encryption. */
export const documentRules: readonly UaRule[] = [
  {
    id: "5-1, 5-2, 5-3",
    says: "the metadata name part 1 of the standard, with the prefix pdfuaid",
    broken: must(
      ({ xmp }) =>
        /xmlns:pdfuaid="http:\/\/www\.aiim\.org\/pdfua\/ns\/id\/"/.test(xmp) &&
        /<pdfuaid:part>1<\/pdfuaid:part>/.test(xmp),
      "no identifier",
    ),
  },
  {
    id: "6.1-1",
    says: "the header is %PDF-1.0 to 1.7",
    broken: must((pdf) => /^%PDF-1\.[0-7]/.test(pdf.header), "header"),
  },
  {
    id: "6.2-1",
    says: "the file is marked as tagged",
    broken: must((pdf) => entry(catalogDict(pdf, "MarkInfo"), "Marked") === "true", "Marked"),
  },
  {
    id: "7.1-4",
    says: "nothing is suspect",
    broken: must((pdf) => entry(catalogDict(pdf, "MarkInfo"), "Suspects") !== "true", "Suspects"),
  },
  {
    id: "7.1-8",
    says: "there is a metadata stream",
    broken: must(({ xmp }) => xmp.includes("<x:xmpmeta"), "none"),
  },
  {
    id: "7.1-9",
    says: "the metadata give the title",
    broken: must(
      ({ xmp }) => /<dc:title>.*<rdf:li[^>]*>[^<]+<\/rdf:li>.*<\/dc:title>/s.test(xmp),
      "dc:title",
    ),
  },
  {
    id: "7.1-10",
    says: "viewers show the title",
    broken: must(
      (pdf) => entry(catalogDict(pdf, "ViewerPreferences"), "DisplayDocTitle") === "true",
      "not shown",
    ),
  },
  {
    id: "7.2-2, 7.2-22, 7.2-29, 7.2-33, 7.2-34",
    says: "the language of text, alternatives, outline and metadata is known",
    broken: must((pdf) => language.test(entry(pdf.catalog, "Lang") ?? ""), "Lang"),
  },
  {
    id: "7.11-1",
    says: "a carried file has its name in both forms",
    broken: (pdf) =>
      pdf.catalog.context
        .enumerateIndirectObjects()
        .flatMap(([ref, object]) =>
          object instanceof PDFDict &&
          entry(object, "Type") === "Filespec" &&
          !(object.has(PDFName.of("F")) && object.has(PDFName.of("UF")))
            ? [String(ref)]
            : [],
        ),
  },
  { id: "7.16-1", says: "the file is not encrypted", broken: must((pdf) => !pdf.encrypted, "Encrypt") },
];
