import ts from "typescript";
import type { Finding, HouseRule, SourceFile } from "./finding.ts";

/**
 * Screens whose words all stand in the catalogue, so that another language lacks none of them. Known exceptions: the bench of one
 * case file with its readings and its file keys, and the owner's page, which are in English alone.
 */
const screens = /^apps\/web\/src\/.*\.tsx$/;
const inEnglishAlone =
  /^apps\/web\/src\/(readings\/(count|field|group-table|list|readings|trace)|case\/|owner\/|page|title-block|bench-main)/;

/** Attributes that are read out or shown. */
const spoken = new Set([
  "aria-label",
  "aria-valuetext",
  "aria-description",
  "title",
  "placeholder",
  "alt",
  "label",
]);
/** Signs of units and the program's own name are the same in every language. */
const everywhere = /\b(mm|kPa|cm|in|px|deg|Treewright)\b|[^\p{L}]/gu;

const hasWords = (text: string): boolean => text.replace(everywhere, "") !== "";

/** The literal texts that an expression may come to. */
function textsIn(node: ts.Expression | undefined): readonly ts.Node[] {
  if (node === undefined) return [];
  if (ts.isStringLiteralLike(node)) return [node];
  if (ts.isTemplateExpression(node)) return [node.head, ...node.templateSpans.map(({ literal }) => literal)];
  if (ts.isConditionalExpression(node)) return [...textsIn(node.whenTrue), ...textsIn(node.whenFalse)];
  if (ts.isBinaryExpression(node)) return [...textsIn(node.left), ...textsIn(node.right)];
  return ts.isParenthesizedExpression(node) ? textsIn(node.expression) : [];
}

function literalsAt(node: ts.Node): readonly ts.Node[] {
  if (ts.isJsxText(node)) return [node];
  if (ts.isJsxExpression(node) && !ts.isJsxAttribute(node.parent)) return textsIn(node.expression);
  if (!ts.isJsxAttribute(node) || !spoken.has(node.name.getText())) return [];
  const value = node.initializer;
  if (value === undefined) return [];
  return ts.isJsxExpression(value) ? textsIn(value.expression) : [value];
}

const textOf = (node: ts.Node): string => ("text" in node ? String(node.text) : node.getText());

function findings(file: SourceFile, source: ts.SourceFile): Finding[] {
  const found: Finding[] = [];
  const visit = (node: ts.Node): void => {
    for (const literal of literalsAt(node)) {
      const text = textOf(literal).trim();
      if (!hasWords(text)) continue;
      const line = source.getLineAndCharacterOfPosition(literal.getStart()).line + 1;
      const says = `"${text}": a screen holds no words of its own, they stand in the catalogue`;
      found.push({ path: file.path, line, says });
    }
    ts.forEachChild(node, visit);
  };
  visit(source);
  return found;
}

/** No literal words within elements, nor in the attributes that are read out. It cannot see words that reach a screen through a variable. */
export const wordsFromCatalogue: HouseRule = (file) =>
  !screens.test(file.path) || inEnglishAlone.test(file.path)
    ? []
    : findings(
        file,
        ts.createSourceFile(file.path, file.text, ts.ScriptTarget.Latest, true, ts.ScriptKind.TSX),
      );
