/** Unpacking of tables that are packed with gzip. */

/** The parts of the platform's streams (WHATWG Compression and Streams) that are used here; Node and browsers have them. */
declare const DecompressionStream: new (
  format: "gzip",
) => {
  readonly readable: {
    getReader(): {
      read(): Promise<{ done: boolean; value?: Uint8Array }>;
      cancel(): Promise<void>;
    };
  };
  readonly writable: {
    getWriter(): {
      write(bytes: Uint8Array): Promise<void>;
      close(): Promise<void>;
      abort(): Promise<void>;
    };
  };
};

/** The packed bytes are no gzip, or end too early. The message says so after a comma. */
export class DamagedPackingError extends Error {
  override readonly name = "DamagedPackingError";
}

/** Whether these bytes begin a file that is packed with gzip (RFC 1952, 2.3.1). */
export function isPacked(bytes: Uint8Array): boolean {
  return bytes[0] === 0x1f && bytes[1] === 0x8b;
}

/**
 * The bytes that were packed, piece by piece. Takes pieces from `packed` as they are needed, and leaves the rest there when
 * nobody asks for more. @throws DamagedPackingError
 */
export async function* unpacked(packed: AsyncIterator<Uint8Array>): AsyncGenerator<Uint8Array> {
  const { readable, writable } = new DecompressionStream("gzip");
  const reader = readable.getReader();
  let isOver = false;
  const feeding = feed(packed, writable.getWriter(), () => isOver);
  try {
    for (;;) {
      const { done, value } = await damageOf(reader.read());
      if (done || value === undefined) break;
      yield value;
    }
    await damageOf(feeding);
  } finally {
    isOver = true;
    await reader.cancel().catch(() => {});
    await feeding.catch(() => {});
  }
}

async function feed(
  packed: AsyncIterator<Uint8Array>,
  writer: { write(bytes: Uint8Array): Promise<void>; close(): Promise<void>; abort(): Promise<void> },
  isOver: () => boolean,
): Promise<void> {
  while (!isOver()) {
    const { done, value } = await packed.next();
    if (done) return writer.close();
    await writer.write(value);
  }
  await writer.abort();
}

async function damageOf<T>(reading: Promise<T>): Promise<T> {
  try {
    return await reading;
  } catch (error) {
    const message = "the packing is damaged, cut short, or holds more than one file. Copy or pack it again.";
    throw new DamagedPackingError(message, { cause: error });
  }
}
