import { first, last } from "../../core/lists.ts";
import type { PdfFile } from "./pdf-file.ts";
import type { Heading } from "./pdf-page.ts";
import { type PdfRef, PdfString } from "./pdf-values.ts";

/** What a document says of itself. */
export interface DocumentFacts {
  readonly title: string;
  readonly author: string;
  readonly subject?: string;
  /** BCP 47, such as `en-GB`. */
  readonly language: string;
  /** Day it was made, `2026-05-01`. */
  readonly date: string;
}

export const producer = "dotdown";

/**
 * The XMP packet: the same facts as the information dictionary, for programs that read XML, and the marks of PDF/UA-1 and
 * PDF/A-3a. Sources: ISO 16684-1 (packet), ISO 14289-1 section 5 and ISO 19005-3 section 6.6.4 (identifiers).
 */
export function xmpPacket({ title, author, subject, language, date }: DocumentFacts): string {
  const time = `${date}T00:00:00Z`;
  const languageText = (text: string) =>
    `<rdf:Alt><rdf:li xml:lang="x-default">${escaped(text)}</rdf:li></rdf:Alt>`;
  return `<?xpacket begin="\uFEFF" id="W5M0MpCehiHzreSzNTczkc9d"?>
<x:xmpmeta xmlns:x="adobe:ns:meta/"><rdf:RDF xmlns:rdf="http://www.w3.org/1999/02/22-rdf-syntax-ns#">
<rdf:Description rdf:about="" xmlns:dc="http://purl.org/dc/elements/1.1/" xmlns:xmp="http://ns.adobe.com/xap/1.0/" xmlns:pdf="http://ns.adobe.com/pdf/1.3/" xmlns:pdfuaid="${uaNamespace}" xmlns:pdfaid="http://www.aiim.org/pdfa/ns/id/">
<dc:format>application/pdf</dc:format>
<dc:title>${languageText(title)}</dc:title>
<dc:creator><rdf:Seq><rdf:li>${escaped(author)}</rdf:li></rdf:Seq></dc:creator>
${subject === undefined ? "" : `<dc:description>${languageText(subject)}</dc:description>\n`}<dc:language><rdf:Bag><rdf:li>${escaped(language)}</rdf:li></rdf:Bag></dc:language>
<xmp:CreateDate>${time}</xmp:CreateDate>
<xmp:ModifyDate>${time}</xmp:ModifyDate>
<xmp:CreatorTool>${producer}</xmp:CreatorTool>
<pdf:Producer>${producer}</pdf:Producer>
<pdfuaid:part>1</pdfuaid:part>
<pdfaid:part>3</pdfaid:part>
<pdfaid:conformance>A</pdfaid:conformance>
</rdf:Description>
${uaSchema}
</rdf:RDF></x:xmpmeta>
<?xpacket end="r"?>`;
}

const uaNamespace = "http://www.aiim.org/pdfua/ns/id/";

/** What the one property means that archives do not know. Source: ISO 19005-3, section 6.6.2.3. */
const uaSchema = `<rdf:Description rdf:about="" xmlns:pdfaExtension="http://www.aiim.org/pdfa/ns/extension/" xmlns:pdfaSchema="http://www.aiim.org/pdfa/ns/schema#" xmlns:pdfaProperty="http://www.aiim.org/pdfa/ns/property#">
<pdfaExtension:schemas><rdf:Bag><rdf:li rdf:parseType="Resource">
<pdfaSchema:schema>PDF/UA identification</pdfaSchema:schema>
<pdfaSchema:namespaceURI>${uaNamespace}</pdfaSchema:namespaceURI>
<pdfaSchema:prefix>pdfuaid</pdfaSchema:prefix>
<pdfaSchema:property><rdf:Seq><rdf:li rdf:parseType="Resource">
<pdfaProperty:name>part</pdfaProperty:name>
<pdfaProperty:valueType>Integer</pdfaProperty:valueType>
<pdfaProperty:category>internal</pdfaProperty:category>
<pdfaProperty:description>Part of ISO 14289 that the file keeps</pdfaProperty:description>
</rdf:li></rdf:Seq></pdfaSchema:property>
</rdf:li></rdf:Bag></pdfaExtension:schemas>
</rdf:Description>`;

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;" };

function escaped(text: string): string {
  return text.replace(/[&<>]/g, (sign) => entities[sign]!);
}

interface OutlineNode {
  readonly heading: Heading;
  readonly children: OutlineNode[];
}

/** The outline: headings as bookmarks, nested by level. Source: ISO 32000-1, section 12.3.3. */
export function writeOutline(file: PdfFile, headings: readonly Heading[]): PdfRef | undefined {
  if (headings.length === 0) return undefined;
  const root = file.reserve();
  const top = writeLevel(file, root, nested(headings));
  file.set(root, { Type: "Outlines", First: top.first, Last: top.last, Count: top.count });
  return root;
}

function nested(headings: readonly Heading[]): OutlineNode[] {
  const roots: OutlineNode[] = [];
  const open: OutlineNode[] = [];
  for (const heading of headings) {
    const node: OutlineNode = { heading, children: [] };
    while (open.length > 0 && last(open).heading.level >= heading.level) open.pop();
    (open.at(-1)?.children ?? roots).push(node);
    open.push(node);
  }
  return roots;
}

function writeLevel(file: PdfFile, parent: PdfRef, nodes: readonly OutlineNode[]) {
  const level = nodes.map((node) => ({ ...node, ref: file.reserve() }));
  let count = level.length;
  for (const [i, { heading, children, ref }] of level.entries()) {
    const below = children.length > 0 ? writeLevel(file, ref, children) : undefined;
    count += below?.count ?? 0;
    file.set(ref, {
      Title: PdfString.text(heading.text),
      Parent: parent,
      Dest: [heading.page, "XYZ", null, heading.topPt, null],
      Prev: level[i - 1]?.ref,
      Next: level[i + 1]?.ref,
      First: below?.first,
      Last: below?.last,
      Count: below?.count,
    });
  }
  return { first: first(level).ref, last: last(level).ref, count };
}

/** A date of the information dictionary. */
export function pdfDate(date: string): PdfString {
  return PdfString.ascii(`D:${date.replaceAll("-", "")}000000Z`);
}
