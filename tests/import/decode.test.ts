import { describe, expect, test } from "vitest";
import { TextDecoding } from "../../server/import/table/decode.ts";

const TEXT = "Carry;Größe\r\n12,5;−3°\r\n";

function decodeText(bytes: Uint8Array): string {
  const decoding = new TextDecoding();
  return decoding.push(bytes) + decoding.end();
}

function utf16(text: string, littleEndian: boolean, mark: boolean): Uint8Array {
  const units = mark ? `\uFEFF${text}` : text;
  const bytes = new Uint8Array(2 * units.length);
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < units.length; at++) view.setUint16(2 * at, units.charCodeAt(at), littleEndian);
  return bytes;
}

describe("the text of a file is told from its bytes", () => {
  test.each([
    ["UTF-8", new TextEncoder().encode(TEXT)],
    ["UTF-8 with a mark", new TextEncoder().encode(`\uFEFF${TEXT}`)],
    ["UTF-16, little end first, with a mark", utf16(TEXT, true, true)],
    ["UTF-16, big end first, with a mark", utf16(TEXT, false, true)],
    ["UTF-16, little end first", utf16(TEXT, true, false)],
    ["UTF-16, big end first", utf16(TEXT, false, false)],
  ])("%s", (_, bytes) => {
    expect(decodeText(bytes)).toBe(TEXT);
  });

  test("what is not valid UTF-8 is windows-1252, in which Latin-1 is contained", () => {
    expect(decodeText(Uint8Array.of(0x47, 0x72, 0xf6, 0xdf, 0x65, 0x20, 0x31, 0xb0, 0x20, 0x80))).toBe(
      "Größe 1° €",
    );
  });

  test("the first bytes that are not ASCII tell; what is damaged later is damaged, not another encoding", () => {
    expect(decodeText(Uint8Array.of(0x61, 0x62, 0x63, 0xc3, 0xa9, 0x20, 0xf6, 0x20))).toBe("abcé \uFFFD ");
    expect(decodeText(Uint8Array.of(0x61, 0x62, 0x63, 0xf6, 0x20, 0xc3, 0xa9))).toBe("abcö Ã©");
  });

  test.each([
    ["nothing", Uint8Array.of()],
    ["one byte", Uint8Array.of(0x41)],
    ["half a mark", Uint8Array.of(0xef, 0xbb)],
    ["half a UTF-16 unit", Uint8Array.of(0xff, 0xfe, 0x41)],
  ])("%s is text, too", (_, bytes) => {
    expect(typeof decodeText(bytes)).toBe("string");
  });
});
