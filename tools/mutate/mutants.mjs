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

const countingCalls = /^(?:slice|at|padStart|padEnd|toFixed|repeat|substring|charAt|charCodeAt|splice|flat)$/;

/**
 * Whether a number counts or points and is no figure, so that 5 % more of it is no mistake that anybody makes: one
 * within an index, what a list is cut or a text padded to, the number of a list's entries, a whole number that something
 * is or is not (`=== 1`), by how many bits to shift, the rest of a division, where a loop of counting begins or by how
 * much it goes on. The changes of their operators are made all the same. Every other number is a figure, 1 and 2 too:
 * half of something is one.
 */
function countsOrPoints(value, ancestors) {
  if (!Number.isInteger(value)) return false;
  const [{ node: parent, key }] = ancestors;
  const isCount = ({ type, name, property }) =>
    /^(?:length|size|count)$|Count$/.test(type === "MemberExpression" ? property.name : name);
  switch (parent.type) {
    case "BinaryExpression": {
      const other = key === "left" ? parent.right : parent.left;
      if (/^(?:[!=]==|<<|>>|>>>|&|\|)$/.test(parent.operator)) return true;
      if (parent.operator === "%" && key === "right") return true;
      if (/^[<>]=?$/.test(parent.operator) && isCount(other)) return true;
      break;
    }
    case "CallExpression":
      if (countingCalls.test(parent.callee.property?.name ?? "")) return true;
      break;
    case "AssignmentExpression":
      if (value === 1 && /^[+-]=$/.test(parent.operator)) return true;
      break;
    case "Property":
      if (parent.key.name === "length") return true;
      break;
    case "VariableDeclarator":
      if (ancestors[2]?.node.type === "ForStatement") return true;
  }
  const pointer = ancestors.findIndex(
    ({ node, key }) => node.type === "MemberExpression" && key === "property",
  );
  return pointer >= 0 && ancestors.slice(0, pointer).every(({ node }) => node.type === "BinaryExpression");
}

const isNode = (value) => typeof value === "object" && value !== null && typeof value.type === "string";

/** @typedef {{ id: number, kind: "logic" | "constant", line: number, was: string, now: string }} Mutant */

/**
 * Source with every mutant in it, each behind its number: `mutants.on === 7 ? changed : original`.
 *
 * @param {string} path
 * @param {string} source
 * @param {number} firstId
 * @param {ReadonlySet<number>} [wanted] the mutants that are to be in it; all without
 * @returns {{ code: string, mutants: Mutant[] }}
 */
export function instrumented(path, source, firstId, wanted) {
  const { program } = parseSync(path, source);
  const mutants = [];
  /** What the node at hand stands in, the innermost first. */
  const ancestors = [];
  const lineAt = (offset) => source.slice(0, offset).split("\n").length;
  const text = (node) => source.slice(node.start, node.end);

  /** The node's text with mutants in it. */
  function write(node, parent, key) {
    ancestors.unshift({ node: parent, key });
    const inner = withChildren(node);
    const changes = changesOf(node, parent, key);
    ancestors.shift();
    let code = inner;
    for (const { kind, now } of changes) {
      const id = firstId + mutants.length;
      mutants.push({ id, kind, line: lineAt(node.start), was: short(text(node)), now: short(now) });
      if (wanted && !wanted.has(id)) continue;
      code = `((mutants.reached && mutants.reached.add(${id})), mutants.on === ${id} ? (${now}) : ${code})`;
    }
    return code === inner ? inner : `(${code})`;
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
          ? numberChange(-node.argument.value)
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
        return literalChanges(node, parent);
      default:
        return isTest(node, parent, key) ? [logic(`!(${text(node)})`)] : [];
    }
  }

  function literalChanges(node, parent) {
    if (typeof node.value === "boolean") return [{ kind: "logic", now: String(!node.value) }];
    // A minus belongs to its number.
    return parent.type === "UnaryExpression" ? [] : numberChange(node.value);
  }

  function numberChange(value) {
    if (typeof value !== "number" || Number.isNaN(value) || value === 0) return [];
    return countsOrPoints(value, ancestors) ? [] : [{ kind: "constant", now: String(value * 1.05) }];
  }

  const head = "const mutants = globalThis.mutants;";
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
