import { type FileRead, readBeside } from "./read-beside.ts";
import { STOCK_FORMAT, STOCK_PATH, STOCK_VERSION, type Stock, stockSchema } from "./stock.ts";

/** Reads the text of a stock file. */
export const readStock = (text: string): FileRead<Stock> =>
  readBeside(text, {
    format: STOCK_FORMAT,
    version: STOCK_VERSION,
    schema: stockSchema,
    path: STOCK_PATH,
    called: "a stock of plates",
  });
