// Programs in WebAssembly that a package carries → the same in plain JavaScript: to compile the former a page would
// need an exception from its content security policy.
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from "node:fs";
import { readFile } from "node:fs/promises";
import { createRequire } from "node:module";
import { transform } from "esbuild";

/** To translate takes half a minute; what was once translated is kept here until packages are installed anew. */
const cache = "node_modules/.cache/dotdown";

/** Goes up when what is kept has to be made anew though program and translator are the same. */
const edition = 1;

/** Base64 of what each program begins with: `\0asm` and the format's version, 1. */
const carried = /"(AGFzbQEAAAA[A-Za-z0-9+/]*={0,2})"/g;

/** Plugin for the bundler: the files that `filter` finds, with their programs in plain JavaScript. */
export function plainPrograms(filter) {
  const programs = new Map();
  return {
    name: "plain-programs",
    setup(bundle) {
      bundle.onLoad({ filter }, async ({ path }) => {
        const numbers = [];
        const text = (await readFile(path, "utf8")).replace(carried, (_, base64) => {
          const bytes = Buffer.from(base64, "base64");
          const hash = createHash("sha256").update(bytes).digest("hex");
          programs.set(hash, bytes);
          numbers.push(hash);
          return `"${Buffer.of(numbers.length - 1).toString("base64")}"`;
        });
        return numbers.length === 0 ? undefined : { contents: `${standIn(numbers)}\n${text}`, loader: "js" };
      });
      bundle.onResolve({ filter: /^plain-program\// }, ({ path }) => ({ path, namespace: "plain-program" }));
      bundle.onLoad({ filter: /./, namespace: "plain-program" }, async ({ path }) => ({
        contents: await plainJavaScript(programs.get(path.split("/")[1])),
        loader: "js",
      }));
    },
  };
}

/** What the file is given for `WebAssembly`: its programs' numbers stand where their bytes stood. */
function standIn(numbers) {
  const imports = numbers.map((hash, at) => `import plainProgram${at} from "plain-program/${hash}";`);
  const names = numbers.map((_, at) => `plainProgram${at}`).join(", ");
  return `${imports.join("\n")}
const WebAssembly = {
  RuntimeError: RangeError,
  async instantiate([number], imports) {
    return { instance: { exports: [${names}][number](imports) } };
  },
};`;
}

/** A program in WebAssembly as a module whose default export makes an instance of it from its imports. */
async function plainJavaScript(bytes) {
  const { version } = createRequire(import.meta.url)("binaryen/package.json");
  const key = createHash("sha256").update(bytes).update(`${version} ${edition}`).digest("hex");
  const file = `${cache}/${key}.js`;
  if (existsSync(file)) return readFileSync(file, "utf8");
  const { code } = await transform(await translated(bytes), { minify: true, charset: "utf8" });
  mkdirSync(cache, { recursive: true });
  // Several may translate at once: each writes a file of its own, and each comes out whole.
  const own = `${file}.${process.pid}-${performance.now()}`;
  writeFileSync(own, code);
  renameSync(own, file);
  return code;
}

async function translated(bytes) {
  const { default: binaryen } = await import("binaryen");
  const { Features } = binaryen;
  const module = binaryen.readBinary(bytes);
  // What the programs use beyond the first edition of WebAssembly, for which the translator was made.
  const {
    BulkMemory,
    BulkMemoryOpt,
    Multivalue,
    MutableGlobals,
    NontrappingFPToInt,
    ReferenceTypes,
    SignExt,
  } = Features;
  module.setFeatures(
    BulkMemory | BulkMemoryOpt | Multivalue | MutableGlobals | NontrappingFPToInt | ReferenceTypes | SignExt,
  );
  module.runPasses([
    "llvm-nontrapping-fptoint-lowering",
    "signext-lowering",
    "llvm-memory-copy-fill-lowering",
  ]);
  binaryen.setOptimizeLevel(1);
  binaryen.setShrinkLevel(0);
  const script = module.emitAsmjs();
  module.dispose();
  return asFactory(script);
}

/** The translation takes its imports from modules and makes one instance at once; who asks for it has them at hand. */
function asFactory(script) {
  const instance = script.indexOf("var retasmFunc = asmFunc(");
  if (instance < 0) throw new Error("the translator writes programs in another way than it did");
  const program = script
    .slice(0, instance)
    .replace(/^import \* as .*$/gm, "")
    // The kind of error that tells the layout engine that its memory may be broken.
    .replace("throw new Error('abort')", "throw new RangeError('unreachable')");
  return `${program}\nexport default asmFunc;\n`;
}
