// Finds what can be changed in a source file, and writes the file so that any one change can be switched on.
import { parseSync } from "oxc-parser";

const swapped = {
  "<": ["<=", ">"],
  "<=": ["<", ">"],
  ">": [">=", "<"],
  ">=": [">", "<"],
  "===": ["!=="],
  "!==": ["==="],
  "+": ["-"],
  "-": ["+"],
  "*": ["/"],
  "/": ["*"],
  "%": ["*"],
};
const swappedCalls = new Map([
  ["min", "max"],
  ["max", "min"],
  ["some", "every"],
  ["every", "some"],
  ["floor", "ceil"],
  ["ceil", "floor"],
]);

/** Calls whose numbers count or cut things: 5 % more of them changes nothing, or breaks at once. */
const countingCalls = /^(?:slice|at|padStart|padEnd|toFixed|repeat|substring|charAt|charCodeAt|splice|flat)$/;

const isNode = (value) => typeof value === "object" && value !== null && typeof value.type === "string";

/** @typedef {{ id: number, kind: "logic" | "constant", line: number, was: string, now: string }} Mutant */

/**
 * Source with every mutant in it, each behind its number: `mutant === 7 ? changed : original`.
 *
 * @param {string} path
 * @param {string} source
 * @param {number} firstId
 * @returns {{ code: string, mutants: Mutant[] }}
 */
export function instrumented(path, source, firstId) {
  const { program } = parseSync(path, source);
  const mutants = [];
  const lineAt = (offset) => source.slice(0, offset).split("\n").length;
  const text = (node) => source.slice(node.start, node.end);

  /** The node's text with mutants in it. */
  function write(node, parent, key) {
    const inner = withChildren(node);
    const changes = changesOf(node, parent, key);
    let code = inner;
    for (const { kind, now } of changes) {
      const id = firstId + mutants.length;
      mutants.push({ id, kind, line: lineAt(node.start), was: short(text(node)), now: short(now) });
      code = `(mutantHit && mutantHit(${id}), mutant === ${id} ? (${now}) : ${code})`;
    }
    return changes.length > 0 ? `(${code})` : code;
  }

  function withChildren(node) {
    const children = childrenOf(node);
    let code = "";
    let at = node.start;
    for (const [child, key] of children) {
      code += source.slice(at, child.start) + write(child, node, key);
      at = child.end;
    }
    return code + source.slice(at, node.end);
  }

  function changesOf(node, parent, key) {
    const logic = (now) => ({ kind: "logic", now });
    switch (node.type) {
      case "BinaryExpression": {
        if (node.operator === "+" && hasText(node)) return [];
        const [left, right] = [text(node.left), text(node.right)];
        return (swapped[node.operator] ?? []).map((operator) => logic(`(${left}) ${operator} (${right})`));
      }
      case "LogicalExpression": {
        const other = { "&&": "||", "||": "&&" }[node.operator];
        return [logic(other ? `(${text(node.left)}) ${other} (${text(node.right)})` : text(node.left))];
      }
      case "UnaryExpression":
        if (node.operator === "!") return [logic(text(node.argument))];
        if (node.operator !== "-") return [];
        return node.argument.type === "Literal"
          ? numberChange(-node.argument.value, parent, key)
          : [logic(text(node.argument))];
      case "CallExpression": {
        const { callee } = node;
        const other = callee.type === "MemberExpression" && swappedCalls.get(callee.property.name);
        if (!other) return [];
        return [
          logic(
            source.slice(node.start, callee.property.start) +
              other +
              source.slice(callee.property.end, node.end),
          ),
        ];
      }
      case "Literal":
        return literalChanges(node, parent, key);
      default:
        return isTest(node, parent, key) ? [logic(`!(${text(node)})`)] : [];
    }
  }

  function literalChanges(node, parent, key) {
    if (typeof node.value === "boolean") return [{ kind: "logic", now: String(!node.value) }];
    // A minus belongs to its number.
    return parent.type === "UnaryExpression" ? [] : numberChange(node.value, parent, key);
  }

  function numberChange(value, parent, key) {
    if (typeof value !== "number" || Number.isNaN(value) || value === 0) return [];
    const counts =
      (parent.type === "MemberExpression" && key === "property") ||
      (parent.type === "CallExpression" && countingCalls.test(parent.callee.property?.name ?? "")) ||
      (parent.type === "BinaryExpression" && /\.length$/.test(text(parent.left)));
    return counts ? [] : [{ kind: "constant", now: String(value * 1.05) }];
  }

  // Kept in constants of the module, which cost nothing in loops that run a million times.
  const head = "const { mutant, mutantHit } = globalThis;";
  return { code: `${head}${withChildren(program)}`, mutants };
}

/** A condition that is no comparison of its own: those have their own changes. */
function isTest(node, parent, key) {
  const decides =
    ["IfStatement", "ConditionalExpression", "WhileStatement"].includes(parent?.type) && key === "test";
  return decides && !["BinaryExpression", "LogicalExpression", "UnaryExpression"].includes(node.type);
}

/** Whether a sum joins texts. */
function hasText(node) {
  if (node.type === "TemplateLiteral") return true;
  if (node.type === "Literal") return typeof node.value === "string";
  return (
    node.type === "BinaryExpression" && node.operator === "+" && (hasText(node.left) || hasText(node.right))
  );
}

const skipped = new Set([
  "ImportDeclaration",
  "TSTypeAliasDeclaration",
  "TSInterfaceDeclaration",
  "TemplateElement",
]);

/** Child nodes in the order of the text, types and what is no expression of its own left out. */
function childrenOf(node) {
  const found = [];
  for (const [key, value] of Object.entries(node)) {
    if (
      key === "parent" ||
      /^(?:typeAnnotation|returnType|typeParameters|typeArguments|superTypeArguments|directive)$/.test(key)
    )
      continue;
    if (node.type === "ExportNamedDeclaration" && key === "source") continue;
    if (node.type === "TSAsExpression" || node.type === "TSSatisfiesExpression") {
      // `as const` on a literal would break around a choice of two.
      if (/\bconst$/.test(JSON.stringify(node.typeAnnotation?.typeName?.name ?? ""))) return [];
    }
    if (key === "key" && !node.computed) continue;
    for (const child of Array.isArray(value) ? value : [value]) {
      if (isNode(child) && !skipped.has(child.type) && !/^TS.*(?:Keyword|Type|Reference)$/.test(child.type))
        found.push([child, key]);
    }
  }
  // A shorthand property is one text with two nodes.
  const unique = found.filter(
    ([child], at) => !found.slice(0, at).some(([one]) => one.start === child.start && one.end === child.end),
  );
  return unique.sort(([a], [b]) => a.start - b.start);
}

const short = (code) => code.replace(/\s+/g, " ").slice(0, 60);
