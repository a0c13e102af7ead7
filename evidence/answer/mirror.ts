/** The word for the other side, in names such as `near`, `hollowNear`, or `nearTip` of a template. */
function otherSide(key: string, parent: string): string {
  if (key === "near") return "off";
  if (key === "off") return "near";
  if (/[a-z]Near$/.test(key)) return key.replace(/Near$/, "Off");
  // "Off" at the end of a name is always the side in a case file.
  if (/[a-z]Off$/.test(key)) return key.replace(/Off$/, "Near");
  if (parent !== "template") return key;
  return key.startsWith("near") ? key.replace("near", "off") : key.replace(/^off/, "near");
}

const negated = (y: unknown): unknown => {
  if (typeof y === "number") return -y;
  const typed = String(y);
  return typed.startsWith("-") ? typed.slice(1) : `-${typed}`;
};

/** The whole case seen in a mirror: near and off change places in every name, and every trace is turned over. */
export function mirrored(value: unknown, parent = ""): unknown {
  if (Array.isArray(value)) {
    if (parent === "points-across" || parent === "repeats-across")
      return parent === "points-across"
        ? value.map(([y, z]) => [negated(y), z]).reverse()
        : value.map((points) => mirrored(points, "points-across"));
    return value.map((one) => mirrored(one, parent));
  }
  if (typeof value !== "object" || value === null) return value;
  const isTrace = "station" in value;
  return Object.fromEntries(
    Object.entries(value).map(([key, inner]) => {
      const across = isTrace && (key === "points" || key === "repeats");
      return [otherSide(key, parent), mirrored(inner, across ? `${key}-across` : key)];
    }),
  );
}
