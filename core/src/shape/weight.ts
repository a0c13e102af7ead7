import { exp, log, PI } from "../engine/number/index.ts";
import type { SurveyedHorse } from "../survey/case.ts";
import { isRead, type Measured, type Reading } from "../survey/reading.ts";
import type { BodyType } from "../terms/weighing.ts";

/** The mass of a horse by one way, kg, with its standard uncertainty. */
export interface MassFound {
  readonly by: "weighed" | "four-measures" | "girth-length" | "guessed";
  readonly kg: number;
  readonly sdKg: number;
  readonly sourceRef: string;
}

/** The mass that is used, and the equations beside it. Weighed wins, then the equation with the smaller error. */
export interface HorseMass {
  readonly best: MassFound;
  readonly equations: readonly MassFound[];
  /** Four measures less girth and length, kg; undefined unless both could be worked out. */
  readonly apartKg: number | undefined;
}

/** Published: Carroll and Huntington 1988, average over 281 horses, cm and kg. 11877 is widely passed on without a first source; 0.2 % apart. */
export const GIRTH_LENGTH_DIVISOR = 11900;
/**
 * Standard error of girth and length as part of the mass. Assumption: the paper's own was not seen, so the mean absolute
 * error of an earlier equation of the same form stands in (5.6 %, Milner and Hewitt 1969, second-hand), times sqrt(pi/2).
 */
export const GIRTH_LENGTH_PART = 0.056 * Math.sqrt(PI / 2);
/** Over 95 in 100 guesses are more than 10 % wrong (a practitioners' text, second-hand). */
const GUESSED_PART = 0.1;

const MARTINSON =
  "published: Martinson et al. 2014, J Anim Sci 92:2230 (629 adults; constants second-hand, error of 22 kg from memory)";
const CATALANO =
  "published: Catalano et al. 2016, J Equine Vet Sci 39:38 (warmblood and draft; error of 28 kg)";
export const GIRTH_LENGTH_SOURCE =
  "published: Carroll and Huntington 1988, Equine Vet J 20:41 (divisor 11900; 11877 is also passed on); its error of 7 % is an assumption, from 5.6 % of an earlier equation of this form";

interface FourMeasures {
  readonly powers: readonly [girth: number, length: number, height: number, neck: number];
  readonly divisor: number;
  readonly errorKg: number;
  readonly sourceRef: string;
}
const adult = (divisor: number): FourMeasures => ({
  powers: [1.486, 0.554, 0.599, 0.173],
  divisor,
  errorKg: 22,
  sourceRef: MARTINSON,
});
const heavy = (divisor: number): FourMeasures => ({
  powers: [1.528, 0.574, 0.246, 0.261],
  divisor,
  errorKg: 28,
  sourceRef: CATALANO,
});
const BY_TYPE: { readonly [T in Exclude<BodyType, "not-said">]: FourMeasures } = {
  arabian: adult(3596),
  pony: adult(3606),
  stock: adult(3441),
  warmblood: heavy(1209),
  draft: heavy(1181),
};

/** Girth squared times length, both cm, over the divisor: kg. */
export const girthLengthKg = (girthCm: number, lengthCm: number, divisor = GIRTH_LENGTH_DIVISOR): number =>
  (girthCm * girthCm * lengthCm) / divisor;

/** Girth, length, height and neck, cm, each to its power, over the type's divisor: kg. */
export function fourMeasuresKg(
  type: Exclude<BodyType, "not-said">,
  measures: readonly [girthCm: number, lengthCm: number, heightCm: number, neckCm: number],
): number {
  const { powers, divisor } = BY_TYPE[type];
  return exp(measures.reduce((sum, cm, i) => sum + (powers[i] ?? 0) * log(cm), 0)) / divisor;
}

const CM_PER_MM = 0.1;

/** The mass of one horse; undefined where it was neither weighed nor measured nor guessed. */
export function massOfHorse({ mass, body }: Pick<SurveyedHorse, "mass" | "body">): HorseMass | undefined {
  const equations = [byFour(body), byTwo(body)].flatMap((one) => one ?? []);
  const weighed = isRead(mass) && mass.instrument !== "eye" ? massAsRead(mass, "weighed") : undefined;
  const best = weighed ?? equations[0] ?? (isRead(mass) ? massAsRead(mass, "guessed") : undefined);
  const [four, two] = equations;
  return best && { best, equations, apartKg: four && two && four.kg - two.kg };
}

function massAsRead(mass: Reading, by: "weighed" | "guessed"): MassFound {
  const read = Math.sqrt(mass.own * mass.own + mass.shared * mass.shared);
  return by === "weighed"
    ? { by, kg: mass.value, sdKg: read, sourceRef: "as weighed" }
    : {
        by,
        kg: mass.value,
        sdKg: Math.max(read, GUESSED_PART * mass.value),
        sourceRef: "guessed by eye; guesses are mostly low (a practitioners' text, second-hand)",
      };
}

function byFour(body: SurveyedHorse["body"]): MassFound | undefined {
  const read = allRead([body.girth, body.length, body.height, body.neck]);
  const [girth, length, height, neck] = read ?? [];
  if (body.type === "not-said" || !read || !girth || !length || !height || !neck) return undefined;
  const { powers, errorKg, sourceRef } = BY_TYPE[body.type];
  const cm = (one: Reading) => one.value * CM_PER_MM;
  const kg = fourMeasuresKg(body.type, [cm(girth), cm(length), cm(height), cm(neck)]);
  return { by: "four-measures", kg, sdKg: both(errorKg, kg * readPart(read, powers)), sourceRef };
}

function byTwo({ girth, length }: SurveyedHorse["body"]): MassFound | undefined {
  if (!isRead(girth) || !isRead(length)) return undefined;
  const kg = girthLengthKg(girth.value * CM_PER_MM, length.value * CM_PER_MM);
  const sdKg = both(GIRTH_LENGTH_PART * kg, kg * readPart([girth, length], [2, 1]));
  return { by: "girth-length", kg, sdKg, sourceRef: GIRTH_LENGTH_SOURCE };
}

const allRead = (all: readonly Measured[]): readonly Reading[] | undefined =>
  all.every(isRead) ? all.filter(isRead) : undefined;

/** Doubt of a product of powers as part of it: own parts each by itself, the parts one tape shares all together. Derived. */
function readPart(readings: readonly Reading[], powers: readonly number[]): number {
  let own = 0;
  let shared = 0;
  readings.forEach((reading, i) => {
    const part = (powers[i] ?? 0) / reading.value;
    own += part * reading.own * (part * reading.own);
    shared += part * reading.shared;
  });
  return both(Math.sqrt(own), shared);
}

const both = (a: number, b: number): number => Math.sqrt(a * a + b * b);
