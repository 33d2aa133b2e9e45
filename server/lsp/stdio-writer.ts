/** Messages over standard output. */
import { AbstractMessageWriter, type Message, type MessageWriter } from "vscode-languageserver/node";

/**
 * Writes each message in one piece, as soon as it is there. The framework's writer waits for a turn of the event loop, and
 * once more between a message's header and its content.
 */
export class StdioMessageWriter extends AbstractMessageWriter implements MessageWriter {
  private readonly stream: NodeJS.WritableStream;
  private failed = 0;

  constructor(stream: NodeJS.WritableStream) {
    super();
    this.stream = stream;
    stream.on("error", (error) => this.fireError(error));
    stream.on("close", () => this.fireClose());
  }

  write(message: Message): Promise<void> {
    const content = JSON.stringify(message);
    const text = `Content-Length: ${Buffer.byteLength(content)}\r\n\r\n${content}`;
    return new Promise((resolve, reject) => {
      this.stream.write(text, "utf8", (error) => {
        if (!error) return resolve();
        this.fireError(error, message, ++this.failed);
        reject(error);
      });
    });
  }

  end(): void {
    this.stream.end();
  }
}
