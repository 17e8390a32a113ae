import {
  type PDFArray,
  type PDFContext,
  type PDFDict,
  PDFHexString,
  PDFName,
  PDFNumber,
  type PDFRef,
} from "@cantoo/pdf-lib";
import type { Role } from "../../drawing/model.ts";

/** A rectangle in the points of a page, from its bottom left corner. */
export type PointBox = readonly [number, number, number, number];

/** An element of the structure tree while pages are painted. Source: ISO 32000-1, section 14.7. */
export class StructureElement {
  readonly ref: PDFRef;
  private readonly dict: PDFDict;
  private readonly kids: PDFArray;

  constructor(
    private readonly context: PDFContext,
    parent: PDFRef,
    readonly role: Role | "Document",
  ) {
    this.kids = context.obj([]) as PDFArray;
    this.dict = context.obj({ Type: "StructElem", S: role, P: parent, K: this.kids }) as PDFDict;
    this.ref = context.register(this.dict);
  }

  child(role: Role): StructureElement {
    const element = new StructureElement(this.context, this.ref, role);
    this.kids.push(element.ref);
    return element;
  }

  /** Adds a piece of a page's marked content. */
  content(page: PDFRef, mcid: number): void {
    if (!this.dict.has(PDFName.of("Pg"))) this.dict.set(PDFName.of("Pg"), page);
    const onFirstPage = this.dict.get(PDFName.of("Pg")) === page;
    this.kids.push(
      onFirstPage ? PDFNumber.of(mcid) : this.context.obj({ Type: "MCR", Pg: page, MCID: mcid }),
    );
  }

  /** Adds something on a page that is no content of it, such as a link's place. */
  holds(page: PDFRef, object: PDFRef): void {
    this.kids.push(this.context.obj({ Type: "OBJR", Pg: page, Obj: object }));
  }

  alternative(text: string): void {
    this.dict.set(PDFName.of("Alt"), PDFHexString.fromText(text));
  }

  box(box: PointBox): void {
    this.dict.set(PDFName.of("A"), this.context.obj({ O: "Layout", Placement: "Block", BBox: [...box] }));
  }

  spanning(columns: number): void {
    this.dict.set(PDFName.of("A"), this.context.obj({ O: "Table", ColSpan: columns }));
  }

  headerOf(scope: "Row" | "Column"): void {
    this.dict.set(PDFName.of("A"), this.context.obj({ O: "Table", Scope: scope }));
  }
}

/** The structure tree of a document: one `Document` element, and which element each piece of each page belongs to. */
export class StructureTree {
  readonly document: StructureElement;
  private readonly rootRef: PDFRef;
  /** By number: the owners of a page's pieces, or the owner of one object. */
  private readonly owners: (PDFRef[] | PDFRef)[] = [];
  private readonly named = new Map<string, StructureElement>();

  constructor(private readonly context: PDFContext) {
    this.rootRef = context.nextRef();
    this.document = new StructureElement(context, this.rootRef, "Document");
  }

  /** A new element below a parent, or the one of that name which an earlier part of it began. */
  element(role: Role, parent = this.document, name?: string): StructureElement {
    const begun = name === undefined ? undefined : this.named.get(name);
    const element = begun ?? parent.child(role);
    if (name !== undefined) this.named.set(name, element);
    return element;
  }

  /** Number of the next page, for its `StructParents`. */
  nextPage(): number {
    return this.owners.push([]) - 1;
  }

  /** Number of an object that an element owns whole, for its `StructParent`. */
  owned({ ref }: StructureElement): number {
    return this.owners.push(ref) - 1;
  }

  /** Gives a piece of the page a number and its owner. */
  mark(pageNumber: number, page: PDFRef, owner: StructureElement): number {
    const mcid = (this.owners[pageNumber] as PDFRef[]).push(owner.ref) - 1;
    owner.content(page, mcid);
    return mcid;
  }

  finish(): PDFRef {
    const numbers = this.owners.flatMap((owner, number) => [
      number,
      Array.isArray(owner) ? this.context.register(this.context.obj(owner)) : owner,
    ]);
    this.context.assign(
      this.rootRef,
      this.context.obj({
        Type: "StructTreeRoot",
        K: [this.document.ref],
        ParentTree: this.context.register(this.context.obj({ Nums: numbers as never })),
        ParentTreeNextKey: this.owners.length,
      }),
    );
    return this.rootRef;
  }
}
