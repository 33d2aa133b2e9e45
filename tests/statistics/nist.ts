/** The data sets of the NIST Statistical Reference Datasets. */
import { numberIn, numbersIn, oracleRows } from "../support/oracle.ts";

export function nistData(dataSet: string): number[] {
  const columns = ["data_set", "first", "then", "times"] as const;
  const [row] = oracleRows("statistics/nist_univariate_data.csv", columns, (r) => r.data_set === dataSet);
  if (row === undefined) throw new Error(`No data for ${dataSet}.`);
  const first = row.first === "" ? [] : [numberIn(row.first)];
  const then = numbersIn(row.then);
  return [...first, ...Array.from({ length: numberIn(row.times) }, () => then).flat()];
}
