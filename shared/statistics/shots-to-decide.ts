/**
 * Beyond this many shots no estimate of "how many would decide it" is given: nobody hits them for one criterion,
 * and the estimate assumes that the player goes on as observed.
 */
export const MOST_SHOTS = 1000;

/**
 * The smallest number of shots from `from` to `most` that decides; a `most` below `from` asks for `from` alone.
 * `undefined` where none does. Asks for one number after the other, since a method may decide with some number and not
 * with one more: `most` calls.
 */
export function fewestThatDecide(
  from: number,
  most: number,
  decides: (shots: number) => boolean,
): number | undefined {
  for (let shots = from; shots <= Math.max(from, most); shots++) if (decides(shots)) return shots;
  return undefined;
}

/**
 * The same by halving the range, about ten calls: for methods that go on deciding with every further shot once they do.
 */
export function firstThatDecides(
  from: number,
  most: number,
  decides: (shots: number) => boolean,
): number | undefined {
  let undecided = from - 1;
  let decided = Math.max(from, most);
  if (!decides(decided)) return undefined;
  while (decided - undecided > 1) {
    const middle = Math.floor((undecided + decided) / 2);
    if (decides(middle)) decided = middle;
    else undecided = middle;
  }
  return decided;
}

/**
 * The same for methods that, once they decide, go on deciding with every second shot: the middle of an even number of shots
 * lies between two of them, and that of an odd number on one, so that a method may decide with some number and not with one
 * more. About twenty calls.
 */
export function firstThatDecidesEvenOrOdd(
  from: number,
  most: number,
  decides: (shots: number) => boolean,
): number | undefined {
  const first = [from, from + 1].flatMap((start) => {
    const steps = firstThatDecides(0, Math.floor((most - start) / 2), (step) => decides(start + 2 * step));
    return steps === undefined ? [] : [start + 2 * steps];
  });
  return first.length === 0 ? undefined : Math.min(...first);
}

/** So many shots that one more changes nothing. */
const ENDLESS = 1e12;

/**
 * The same as `fewestThatDecide` for new shots against a baseline that stays as it is: `"never"` where no number of new
 * shots decides, since the baseline alone leaves more doubt than there is room for. Then the baseline is too short, and
 * hitting more is no help. `undefined` where more than `most` do.
 */
export function newShotsThatDecide(
  from: number,
  most: number,
  decides: (shots: number) => boolean,
): number | "never" | undefined {
  const total = fewestThatDecide(from, most, decides);
  if (total !== undefined) return total;
  for (let shots = Math.max(from, most); shots < ENDLESS; shots *= 2) if (decides(shots)) return undefined;
  return "never";
}
