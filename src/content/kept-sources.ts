import type { Source } from "./world.ts";

type Sources = ReadonlyMap<string, Source>;

/** The sources, with those in place of their likes that have not changed: what was read of them is still known. */
export function withKept(sources: Sources, before: Sources): Sources {
  return new Map([...sources].map(([path, source]) => [path, kept(source, before.get(path))]));
}

function kept(source: Source, before: Source | undefined): Source {
  const under = source.under && kept(source.under, before?.under);
  const isKept =
    before?.file === source.file &&
    before.text === source.text &&
    before.under === under &&
    before.bytes === source.bytes &&
    Buffer.compare(before.content ?? new Uint8Array(), source.content ?? new Uint8Array()) === 0;
  return isKept ? before : { ...source, ...(under && { under }) };
}
