import assert from "node:assert/strict";
import { describe, expect, test } from "vitest";
import browserAssert from "./browser-assert.ts";

/** Calls that hold and calls that must not, given to Node's assertions and to ours alike. */
const calls: { readonly [name: string]: (use: typeof browserAssert) => void | Promise<void> } = {
  "ok 1": (use) => use.ok(1),
  "ok 0": (use) => use.ok(0),
  "bare call": (use) => use(""),
  "equal, same": (use) => use.equal(Number.NaN, Number.NaN),
  "equal, other type": (use) => use.equal(1, "1"),
  "equal, signed zero": (use) => use.equal(0, -0),
  "notEqual, other": (use) => use.notEqual(1, 2),
  "notEqual, same": (use) => use.notEqual("a", "a"),
  "deepEqual, same": (use) => use.deepEqual({ a: [1, { b: null }] }, { a: [1, { b: null }] }),
  "deepEqual, other value": (use) => use.deepEqual({ a: [1, 2] }, { a: [1, 3] }),
  "deepEqual, more keys": (use) => use.deepEqual({ a: 1, b: undefined }, { a: 1 }),
  "deepEqual, fewer keys": (use) => use.deepEqual({ a: 1 }, { a: 1, b: undefined }),
  "deepEqual, other key": (use) => use.deepEqual({ a: undefined }, { b: undefined }),
  "deepEqual, array and object": (use) => use.deepEqual([], {}),
  "match, like": (use) => use.match("abc", /b/),
  "match, unlike": (use) => use.match("abc", /d/),
  "doesNotMatch, unlike": (use) => use.doesNotMatch("abc", /d/),
  "doesNotMatch, like": (use) => use.doesNotMatch("abc", /b/),
  "rejects, rejection": (use) => use.rejects(Promise.reject(new Error("bad")), /bad/),
  "rejects, other words": (use) => use.rejects(Promise.reject(new Error("bad")), /good/),
  "rejects, class": (use) => use.rejects(Promise.reject(new RangeError("bad")), RangeError),
  "rejects, no rejection": (use) => use.rejects(Promise.resolve(1)),
  fail: (use) => use.fail("always"),
};

describe("assertions in the web worker agree with Node's", () => {
  test.each(Object.keys(calls))("%s", async (name) => {
    const holds = (use: typeof browserAssert): Promise<boolean> =>
      Promise.resolve(use)
        .then(calls[name])
        .then(
          () => true,
          () => false,
        );
    expect(await holds(browserAssert)).toBe(await holds(assert as unknown as typeof browserAssert));
  });
});
