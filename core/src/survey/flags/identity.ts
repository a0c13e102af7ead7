import type { Survey } from "../case.ts";
import { takeTransponder, transponderDoubts } from "../transponder.ts";
import { uelnDoubts } from "../ueln.ts";
import { type Flag, flag } from "./flag.ts";

/** What is unusual about a horse's numbers. Older chips with a maker's code are legal history; they are flagged and nothing more. */
export const identityFlags = ({ horses }: Survey): Flag[] =>
  horses.flatMap(({ identity: { transponder, ueln } }, at) => {
    const path = `horses[${at}].identity`;
    const chip = takeTransponder(transponder);
    const same = transponder !== "" && transponder === ueln;
    const twice = horses.findIndex(
      (other) => transponder !== "" && other.identity.transponder === transponder,
    );
    return [
      ...(chip.ok ? transponderDoubts(chip.transponder) : []).map((says) =>
        flag(`${path}.transponder`, says),
      ),
      ...(ueln === "" ? [] : uelnDoubts(ueln)).map((says) => flag(`${path}.ueln`, says)),
      ...(same
        ? [
            flag(
              `${path}.ueln`,
              "the number for life is the chip's number: they are two numbers, is it copied?",
            ),
          ]
        : []),
      ...(twice >= 0 && twice < at
        ? [flag(`${path}.transponder`, `the same chip as horse ${twice + 1} of this case: read it once more`)]
        : []),
    ];
  });
