import ts from "typescript";
import type { Finding, HouseRule, SourceFile } from "./finding.ts";

/** Exact in every JavaScript engine; the rest of Math differs in its last bit. */
const exactMath = new Set(["sqrt", "abs", "min", "max", "floor", "ceil", "round", "trunc", "sign", "imul"]);

/** What the outside world is called, and where it belongs. */
const outside: Readonly<Record<string, string>> = {
  Date: "the clock belongs in an app: pass the day as an argument, it stands in the case",
  performance: "the clock belongs in an app or a benchmark",
  process: "the process belongs in an app",
  console: "core says nothing by itself: return it, and let an app print it",
  fetch: "the network belongs in an app or a bridge",
  setTimeout: "core waits for nothing: be a generator and let the app schedule it",
  setInterval: "core waits for nothing: be a generator and let the app schedule it",
  crypto: "chance is seeded: take it from engine/random",
  document: "the screen belongs in apps/web",
  window: "the screen belongs in apps/web",
  localStorage: "storage belongs in an app or a bridge",
  Intl: "language belongs in an app: core writes numbers itself, the same on every machine",
};

function isNameOfProperty(node: ts.Identifier): boolean {
  const parent = node.parent;
  if (ts.isPropertyAccessExpression(parent) || ts.isQualifiedName(parent))
    return "name" in parent && parent.name === node;
  return (
    (ts.isPropertyAssignment(parent) || ts.isPropertySignature(parent) || ts.isMethodSignature(parent)) &&
    parent.name === node
  );
}

/** A name declared in the file itself is not the world's. */
function declaredNames(file: ts.SourceFile): Set<string> {
  const names = new Set<string>();
  const visit = (node: ts.Node): void => {
    const isDeclaration = ts.isVariableDeclaration(node) || ts.isParameter(node) || ts.isBindingElement(node);
    if ((isDeclaration || ts.isImportSpecifier(node)) && ts.isIdentifier(node.name))
      names.add(node.name.text);
    ts.forEachChild(node, visit);
  };
  visit(file);
  return names;
}

function saysOf(node: ts.Node, declared: ReadonlySet<string>): string | undefined {
  const isPower =
    ts.isBinaryExpression(node) &&
    [ts.SyntaxKind.AsteriskAsteriskToken, ts.SyntaxKind.AsteriskAsteriskEqualsToken].includes(
      node.operatorToken.kind,
    );
  if (isPower)
    return "** differs between JavaScript engines: use pow from engine/number, or write the product out";
  if (!ts.isIdentifier(node) || declared.has(node.text) || isNameOfProperty(node)) return undefined;
  if (node.text === "Math") {
    const member = ts.isPropertyAccessExpression(node.parent) ? node.parent.name.text : "by itself";
    if (exactMath.has(member)) return undefined;
    if (member === "random") return "Math.random is unseeded chance: take a seeded draw from engine/random";
    return `Math.${member} differs between JavaScript engines: use engine/number`;
  }
  return Object.hasOwn(outside, node.text) ? `${node.text}: ${outside[node.text]}` : undefined;
}

const isCore = (path: string): boolean => /^core\/src\/.*\.ts$/.test(path) && !path.endsWith(".test.ts");

/** Core is a pure function of its arguments, with the same bits in every JavaScript engine. */
export const pureCore: HouseRule = (source: SourceFile) => {
  if (!isCore(source.path)) return [];
  const file = ts.createSourceFile(source.path, source.text, ts.ScriptTarget.ES2022, true);
  const declared = declaredNames(file);
  const findings: Finding[] = [];
  const visit = (node: ts.Node): void => {
    const says = saysOf(node, declared);
    if (says !== undefined) {
      findings.push({
        path: source.path,
        line: file.getLineAndCharacterOfPosition(node.getStart()).line + 1,
        says,
      });
    }
    ts.forEachChild(node, visit);
  };
  visit(file);
  return findings;
};
