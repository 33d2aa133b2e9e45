/** The part of `node:assert/strict` that suites use, for the web worker, where Node's own does not exist. */
type Class = new (...parameters: never[]) => Error;

function fail(message: string | Error | undefined, otherwise: string): never {
  throw message instanceof Error ? message : new Error(message ?? otherwise);
}

function show(value: unknown): string {
  return typeof value === "string"
    ? JSON.stringify(value)
    : (JSON.stringify(value, undefined, 2) ?? String(value));
}

function ok(value: unknown, message?: string | Error): asserts value {
  if (!value) fail(message, `Expected something true, found ${show(value)}`);
}

function equal(actual: unknown, expected: unknown, message?: string | Error): void {
  if (!Object.is(actual, expected)) fail(message, `Expected ${show(expected)}, found ${show(actual)}`);
}

function notEqual(actual: unknown, unwanted: unknown, message?: string | Error): void {
  if (Object.is(actual, unwanted)) fail(message, `Expected anything but ${show(unwanted)}`);
}

/** For plain data: objects, arrays, strings, numbers, booleans, null and undefined. */
function deepEqual(actual: unknown, expected: unknown, message?: string | Error): void {
  if (!same(actual, expected)) fail(message, `Expected ${show(expected)}\nfound ${show(actual)}`);
}

function match(text: string, pattern: RegExp, message?: string | Error): void {
  if (!pattern.test(text)) fail(message, `Expected text like ${pattern}, found ${show(text)}`);
}

function doesNotMatch(text: string, pattern: RegExp, message?: string | Error): void {
  if (pattern.test(text)) fail(message, `Expected no text like ${pattern}, found ${show(text)}`);
}

async function rejects(promise: Promise<unknown>, expected?: RegExp | Class): Promise<void> {
  const error: unknown = await promise.then(
    () => fail(undefined, "Expected a rejection, found a result"),
    (reason: unknown) => reason,
  );
  if (expected instanceof RegExp) match(String(error), expected);
  else if (expected) ok(error instanceof expected, `Expected a ${expected.name}, found ${String(error)}`);
}

function same(one: unknown, other: unknown): boolean {
  if (Object.is(one, other)) return true;
  if (typeof one !== "object" || typeof other !== "object" || one === null || other === null) return false;
  if (Array.isArray(one) !== Array.isArray(other)) return false;
  const keys = Object.keys(one);
  return (
    keys.length === Object.keys(other).length &&
    keys.every((key) => Object.hasOwn(other, key) && same(Reflect.get(one, key), Reflect.get(other, key)))
  );
}

export default Object.assign(ok, {
  ok,
  equal,
  notEqual,
  deepEqual,
  match,
  doesNotMatch,
  rejects,
  fail: (message?: string | Error) => fail(message, "Failed"),
});
