/**
 * The first index, of so many from 0, from which on something is so; `length` where it is nowhere. Logarithmic.
 * @param isSo once true, for all that follow as well
 */
export function firstIndexWhere(length: number, isSo: (index: number) => boolean): number {
  let from = 0;
  let to = length;
  while (from < to) {
    const middle = (from + to) >> 1;
    if (isSo(middle)) to = middle;
    else from = middle + 1;
  }
  return from;
}
