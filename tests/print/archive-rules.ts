import { PDFDict, PDFHexString, PDFName, PDFNumber, PDFRawStream, PDFString } from "@cantoo/pdf-lib";
import { carriedBy, carriedStream, dictOf, has, type Kept, kept, listOf, profileOf } from "./archive-file.ts";
import { entry, type RawPdf } from "./raw-pdf.ts";
import { pieces } from "./ua/rule.ts";

interface ArchiveRule {
  /** Clause of ISO 19005-3:2012. */
  readonly clause: string;
  readonly says: string;
  readonly holds: (file: Kept) => boolean;
}

const fontsOf = ({ pages }: RawPdf) => pages.flatMap(({ fonts }) => [...fonts.values()]);
const annotationsOf = ({ dicts }: Kept) => dicts.filter((dict) => entry(dict, "Type") === "Annot");

/** The dictionary of the table of objects, which stands in for a trailer. Source: ISO 32000-1, section 7.5.8. */
function trailerOf(text: string): string {
  const from = Number(/startxref\n(\d+)\n%%EOF/.exec(text)?.[1]);
  return text.slice(from, text.indexOf("stream", from));
}

/** The deepest that states are saved one within another. */
function depthOfStates(content: string): number {
  let [open, deepest] = [0, 0];
  for (const [word] of content.matchAll(/(?<=\s|^)[qQ](?=\s|$)/g)) {
    open += word === "q" ? 1 : -1;
    deepest = Math.max(deepest, open);
  }
  return deepest;
}

const operators = new Set(
  "q Q cm w J j M d ri i gs m l c v y h re S s f F f* B B* b b* n W W* BT ET Tc Tw Tz TL Tf Tr Ts Td TD Tm T* Tj TJ ' \" CS cs SC SCN sc scn G g RG rg K k sh BI ID EI Do MP DP BMC BDC EMC BX EX".split(
    " ",
  ),
);

function operatorsOf(content: string): string[] {
  // Strings first: one at the end of a dictionary has its bracket beside those of the dictionary.
  const bare = content.replace(/<[\dA-Fa-f]*>/g, " ").replace(/<<.*?>>|\[[^\]]*\]|\/[^\s<>[\]()/]+/g, " ");
  return bare.split(/\s+/).filter((word) => word !== "" && !/^[-+.\d]/.test(word));
}

/**
 * Rules of PDF/A-3a. Source: ISO 19005-3:2012, by its clauses, as the veraPDF consortium's validation profile for PDF/A-3a lists
 * them (CC BY 4.0). What is the same in PDF/UA-1 (marks, structure, language, alternatives, widths) stands in `pdf-ua-rules.ts`.
 * Left out as there is nothing here that they speak of: forms, optional content, alternate presentations, XFA, inline images,
 * halftones, separations, JPEG 2000, signatures and other permissions, page transitions.
 */
export const archiveRules: readonly ArchiveRule[] = [
  {
    clause: "6.1.2",
    says: "the header is at the start, and a comment of four signs over 127 follows it",
    holds: ({ text }) => /^%PDF-1\.[0-7]\r?\n%[\x80-\xff]{4}/.test(text),
  },
  {
    clause: "6.1.3",
    says: "the trailer has an identifier and no encryption; nothing follows the end of the file but a line's end",
    holds: ({ text, pdf }) =>
      /\/ID ?\[<[0-9A-F]{32}> ?<[0-9A-F]{32}>\]/.test(trailerOf(text)) &&
      !pdf.encrypted &&
      /%%EOF\r?\n?$/.test(text),
  },
  {
    clause: "6.1.6",
    says: "strings of hexadecimal digits have an even number of them, and nothing else",
    holds: ({ objects }) =>
      objects
        .filter((object) => object instanceof PDFHexString)
        .every((one) => /^([0-9A-Fa-f]{2})*$/.test(one.asString())),
  },
  {
    clause: "6.1.7.1",
    says: "each stream is as long as it says, its keywords on lines of their own, and lies in the file itself",
    holds: ({ text, objects }) => {
      const lengths = [...text.matchAll(/\/Length (\d+).*?>>\nstream\n/gs)];
      const ends = lengths.every(({ 0: head, 1: length, index }) =>
        text.startsWith("\nendstream\nendobj\n", index + head.length + Number(length)),
      );
      const streams = objects.filter((one) => one instanceof PDFRawStream);
      return (
        lengths.length > 0 && ends && streams.every(({ dict }) => !has(dict, "F", "FFilter", "FDecodeParms"))
      );
    },
  },
  {
    clause: "6.1.7.2",
    says: "streams are packed by deflating or are pictures of photographs, never by LZW or a cipher",
    holds: ({ objects }) =>
      objects
        .filter((one) => one instanceof PDFRawStream)
        .every(({ dict }) => ["FlateDecode", "DCTDecode", undefined].includes(entry(dict, "Filter"))),
  },
  {
    clause: "6.1.9",
    says: "objects begin on a line of their own, with single spaces between their numbers",
    holds: ({ text }) => {
      const begins = [...text.matchAll(/(?:^|\n)\d+ +\d+ +obj./gs)];
      return begins.length > 0 && begins.every(([begin]) => /^\n?\d+ 0 obj\n$/.test(begin));
    },
  },
  {
    clause: "6.1.13",
    says: "no number, name, string, count of objects, depth of states or size of a page is beyond what readers take",
    holds: ({ objects, pdf }) =>
      objects.length < 8_388_607 &&
      objects.every((object) => {
        if (object instanceof PDFNumber) return Math.abs(object.asNumber()) <= 2 ** 31 - 1;
        if (object instanceof PDFName) return object.asString().length <= 127;
        if (object instanceof PDFString || object instanceof PDFHexString)
          return object.asBytes().length <= 32_767;
        return true;
      }) &&
      pdf.pages.every(({ content }) => depthOfStates(content) <= 28),
  },
  {
    clause: "6.2.2",
    says: "pages have resources of their own, and paint with the operators of ISO 32000-1 alone",
    holds: ({ dicts, pdf }) =>
      dicts.filter((dict) => entry(dict, "Type") === "Page").every((page) => has(page, "Resources")) &&
      pdf.pages.every(({ content }) => operatorsOf(content).every((word) => operators.has(word))),
  },
  {
    clause: "6.2.3",
    says: "there is one output intent, with an ICC profile of a screen or printer, at most of version 4, in three colours",
    holds: (file) => {
      const profile = profileOf(file);
      const intents = listOf(file.pdf.catalog, "OutputIntents").map((ref) =>
        file.pdf.catalog.context.lookup(ref, PDFDict),
      );
      if (!profile || intents.length !== 1) return false;
      const sign = (at: number) => String.fromCharCode(...profile.bytes.subarray(at, at + 4));
      return (
        entry(intents[0], "S") === "GTS_PDFA1" &&
        entry(intents[0], "OutputConditionIdentifier") !== undefined &&
        entry(profile.stream.dict, "N") === "3" &&
        ["mntr", "prtr"].includes(sign(12)) &&
        sign(16) === "RGB " &&
        sign(36) === "acsp" &&
        profile.bytes[8]! <= 4
      );
    },
  },
  {
    clause: "6.2.4.3",
    says: "colours are greys or red, green and blue, which the output intent explains",
    holds: ({ pdf }) =>
      pdf.pages.every(
        ({ content }) => !operatorsOf(content).some((word) => ["k", "K", "cs", "CS", "sh"].includes(word)),
      ),
  },
  {
    clause: "6.2.5, 6.2.6, 6.2.10",
    says: "there are no graphics states, groups or soft masks, so nothing is transparent",
    holds: ({ dicts }) =>
      dicts.every((dict) => !has(dict, "ExtGState", "Group", "SMask") && entry(dict, "Type") !== "ExtGState"),
  },
  {
    clause: "6.2.8",
    says: "pictures have no alternates, are not smoothed and not parts of a separate file",
    holds: ({ objects }) =>
      objects
        .filter((one) => one instanceof PDFRawStream)
        .filter(({ dict }) => entry(dict, "Subtype") === "Image")
        .every(({ dict }) => !has(dict, "Alternates", "OPI") && entry(dict, "Interpolate") !== "true"),
  },
  {
    clause: "6.2.11.4.1, 6.2.11.4.2",
    says: "fonts are embedded, and no list of their glyphs could be wrong",
    holds: ({ pdf }) => fontsOf(pdf).every(({ embedded, hasCidSet }) => embedded && !hasCidSet),
  },
  {
    clause: "6.2.11.7.2, 6.2.11.7.3",
    says: "every glyph shown maps to Unicode, none to a private sign",
    holds: ({ pdf }) =>
      pieces(pdf).every(({ page, piece }) =>
        piece.codes.every((code) =>
          /^[^\0\uFEFF\uFFFE\uE000-\uF8FF]+$/.test(page.fonts.get(piece.font ?? "")?.unicode.get(code) ?? ""),
        ),
      ),
  },
  {
    clause: "6.3.1, 6.3.2",
    says: "annotations are links that are printed and not hidden",
    holds: (file) =>
      annotationsOf(file).every(
        (dict) => entry(dict, "Subtype") === "Link" && (Number(entry(dict, "F")) & 0b100111) === 4,
      ),
  },
  {
    clause: "6.5.1, 6.5.2",
    says: "actions go to a page or an address, and none happens by itself",
    holds: (file) =>
      annotationsOf(file).every((dict) => ["GoTo", "URI"].includes(entry(dictOf(dict, "A"), "S") ?? "")) &&
      !has(file.pdf.catalog, "AA", "OpenAction") &&
      file.dicts.every((dict) => entry(dict, "Type") !== "Page" || !has(dict, "AA")),
  },
  {
    clause: "6.6.2.1, 6.6.2.2",
    says: "the metadata are a packet that any program can read, without an encoding of its own",
    holds: ({ pdf }) => {
      const metadata = pdf.catalog.lookup(PDFName.of("Metadata"));
      return (
        metadata instanceof PDFRawStream &&
        !has(metadata.dict, "Filter") &&
        /^<\?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"\?>/.test(pdf.xmp)
      );
    },
  },
  {
    clause: "6.6.2.3",
    says: "a property that archives do not know is described beside it",
    holds: ({ pdf: { xmp } }) => {
      const known = ["rdf", "x", "dc", "xmp", "pdf", "pdfaid", "pdfaExtension", "pdfaSchema", "pdfaProperty"];
      const used = new Set([...xmp.matchAll(/<(\w+):\w+/g)].map(([, prefix]) => prefix!));
      const described = new Set(
        [...xmp.matchAll(/<pdfaSchema:prefix>(\w+)<\/pdfaSchema:prefix>/g)].map(([, prefix]) => prefix!),
      );
      return [...used].every((prefix) => known.includes(prefix) || described.has(prefix));
    },
  },
  {
    clause: "6.6.3",
    says: "title, author, programs and days are the same in the metadata and in the information dictionary",
    holds: ({ pdf: { xmp, catalog } }) => {
      const info = catalog.context.lookup(catalog.context.trailerInfo.Info, PDFDict);
      const told = (key: string) =>
        entry(info, key)?.replace(/[&<>]/g, (sign) => ({ "&": "&amp;", "<": "&lt;", ">": "&gt;" })[sign]!);
      const day = /^D:(\d{4})(\d\d)(\d\d)/.exec(told("CreationDate") ?? "");
      return (
        xmp.includes(`<rdf:li xml:lang="x-default">${told("Title")}</rdf:li>`) &&
        xmp.includes(`<rdf:Seq><rdf:li>${told("Author")}</rdf:li></rdf:Seq>`) &&
        xmp.includes(`<xmp:CreatorTool>${told("Creator")}<`) &&
        xmp.includes(`<pdf:Producer>${told("Producer")}<`) &&
        xmp.includes(`<xmp:CreateDate>${day?.slice(1).join("-")}T`)
      );
    },
  },
  {
    clause: "6.6.4",
    says: "the metadata name part 3 and level A",
    holds: ({ pdf: { xmp } }) =>
      xmp.includes('xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/"') &&
      xmp.includes("<pdfaid:part>3</pdfaid:part>") &&
      xmp.includes("<pdfaid:conformance>A</pdfaid:conformance>"),
  },
  {
    clause: "6.8",
    says: "a carried file has its name twice, its kind, its day and what it is to the document, which names it as its own",
    holds: (file) => {
      const own = listOf(file.pdf.catalog, "AF").map((ref) => file.pdf.catalog.context.lookup(ref, PDFDict));
      return carriedBy(file).every((spec) => {
        const stream = carriedStream(spec);
        return (
          entry(spec, "F") === entry(spec, "UF") &&
          entry(spec, "F") !== undefined &&
          ["Source", "Data", "Alternative", "Supplement", "Unspecified"].includes(
            entry(spec, "AFRelationship") ?? "",
          ) &&
          own.includes(spec) &&
          /^[\w.+-]+\/[\w.+-]+$/.test(entry(stream?.dict, "Subtype") ?? "") &&
          /^D[:]\d{8}/.test(entry(dictOf(stream?.dict, "Params"), "ModDate") ?? "")
        );
      });
    },
  },
  {
    clause: "6.9, 6.10, 6.11",
    says: "there is nothing optional, no other presentation and nothing that a reader must be able to do",
    holds: ({ pdf: { catalog } }) =>
      !has(catalog, "OCProperties", "Requirements") &&
      !has(dictOf(catalog, "Names"), "AlternatePresentations"),
  },
];

/** Every broken rule, as `6.2.3: there is one output intent …`. */
export async function archiveBreaks(bytes: Uint8Array): Promise<string[]> {
  const file = await kept(bytes);
  return archiveRules.filter(({ holds }) => !holds(file)).map(({ clause, says }) => `${clause}: ${says}`);
}
