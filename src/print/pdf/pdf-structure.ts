import type { Role } from "../../drawing/model.ts";
import type { PdfFile } from "./pdf-file.ts";
import { type PdfDict, type PdfRef, PdfString, type PdfValue } from "./pdf-values.ts";

/** A rectangle in the points of a page, from its bottom left corner. */
export type PointBox = readonly [number, number, number, number];

/** An element of the structure tree while pages are painted. Source: ISO 32000-1, section 14.7. */
export class StructureElement {
  readonly ref: PdfRef;
  readonly #kids: { readonly reading: number; readonly value: PdfValue }[] = [];
  #page: PdfRef | undefined;
  #alt: PdfString | undefined;
  #attributes: PdfDict | undefined;

  constructor(
    private readonly tree: StructureTree,
    private readonly parent: PdfRef,
    readonly role: Role | "Document",
  ) {
    this.ref = tree.enter(this);
  }

  child(role: Role): StructureElement {
    const element = new StructureElement(this.tree, this.ref, role);
    this.#add(element.ref);
    return element;
  }

  /** Adds a piece of a page's marked content. */
  content(page: PdfRef, mcid: number): void {
    this.#page ??= page;
    this.#add(this.#page === page ? mcid : { Type: "MCR", Pg: page, MCID: mcid });
  }

  /** Adds something on a page that is no content of it, such as a link's place. */
  holds(page: PdfRef, object: PdfRef): void {
    this.#add({ Type: "OBJR", Pg: page, Obj: object });
  }

  alternative(text: string): void {
    this.#alt = PdfString.text(text);
  }

  box(box: PointBox): void {
    this.#attributes = { O: "Layout", Placement: "Block", BBox: box };
  }

  spanning(columns: number): void {
    this.#attributes = { O: "Table", ColSpan: columns };
  }

  headerOf(scope: "Row" | "Column", columns = 1): void {
    this.#attributes = { O: "Table", Scope: scope, ...(columns > 1 && { ColSpan: columns }) };
  }

  #add(value: PdfValue): void {
    this.#kids.push({ reading: this.tree.reading, value });
  }

  /** As it stands in the file: what is in it in the order of reading. */
  get dict(): PdfDict {
    return {
      Type: "StructElem",
      S: this.role,
      P: this.parent,
      K: this.#kids.toSorted((a, b) => a.reading - b.reading).map(({ value }) => value),
      Pg: this.#page,
      Alt: this.#alt,
      A: this.#attributes,
    };
  }
}

/** The structure tree of a document: one `Document` element, and which element each piece of each page belongs to. */
export class StructureTree {
  readonly document: StructureElement;
  /** Place in the order of reading of what is painted now. */
  reading = 0;
  private readonly root: PdfRef;
  private readonly elements: StructureElement[] = [];
  /** By number: the owners of a page's pieces, or the owner of one object. */
  private readonly owners: (PdfRef[] | PdfRef)[] = [];
  private readonly named = new Map<string, StructureElement>();

  constructor(private readonly file: PdfFile) {
    this.root = file.reserve();
    this.document = new StructureElement(this, this.root, "Document");
  }

  /** Keeps an element until all of them are written, and gives it its number. */
  enter(element: StructureElement): PdfRef {
    this.elements.push(element);
    return this.file.reserve();
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

  /** Gives the next piece of the page its owner: they are numbered from 0, as the page's stream numbers them. */
  mark(pageNumber: number, page: PdfRef, owner: StructureElement): void {
    const mcid = (this.owners[pageNumber] as PdfRef[]).push(owner.ref) - 1;
    owner.content(page, mcid);
  }

  finish(): PdfRef {
    const { file } = this;
    for (const { ref, dict } of this.elements) file.set(ref, dict);
    const numbers = this.owners.flatMap((owner, number) => [
      number,
      Array.isArray(owner) ? file.add(owner) : owner,
    ]);
    file.set(this.root, {
      Type: "StructTreeRoot",
      K: [this.document.ref],
      ParentTree: file.add({ Nums: numbers }),
      ParentTreeNextKey: this.owners.length,
    });
    return this.root;
  }
}
