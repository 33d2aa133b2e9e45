/**
 * The k-th smallest entry of a table whose rows and columns both ascend, without writing the table down: 10,000 shots
 * have 50 million pairs.
 */

/** Entries in row r stand in the columns `first(r)` … `columns` − 1; `at` never falls as row or column grows. */
export interface SortedGrid {
  readonly rows: number;
  readonly columns: number;
  readonly first: (row: number) => number;
  readonly at: (row: number, column: number) => number;
}

/**
 * The k-th smallest entry, 1 for the smallest; exactly one of the entries, equal ones counted each. NaN where k is none, or entries are not
 * finite.
 *
 * Halves the range of values and counts the entries below by one walk down the stairs that separate them. O(rows +
 * columns) a walk, about sixty walks for ordinary readings.
 */
export function kthSmallest(grid: SortedGrid, k: number): number {
  let low = grid.at(0, grid.first(0));
  let high = grid.at(grid.rows - 1, grid.columns - 1);
  if (!Number.isFinite(high - low) || !(k >= 1) || walk(grid, high).upTo < k) return Number.NaN;
  const lowest = walk(grid, low);
  if (lowest.upTo >= k) return low;
  let above = lowest.above;
  // Fewer than k entries are up to `low`, the next is `above`; k or more are up to `high`.
  for (;;) {
    const middle = low + (high - low) / 2;
    if (middle <= low || middle >= high) return above; // no number lies between
    const found = walk(grid, middle);
    if (found.upTo >= k) high = middle;
    else {
      low = middle;
      above = found.above;
    }
  }
}

/** How many entries are up to `value`, and the smallest above it. */
function walk({ rows, columns, first, at }: SortedGrid, value: number): { upTo: number; above: number } {
  let upTo = 0;
  let above = Number.POSITIVE_INFINITY;
  let column = columns;
  for (let row = 0; row < rows; row++) {
    while (column > 0 && at(row, column - 1) > value) column--;
    const beyond = Math.max(column, first(row));
    upTo += beyond - first(row);
    if (beyond < columns) above = Math.min(above, at(row, beyond));
  }
  return { upTo, above };
}
