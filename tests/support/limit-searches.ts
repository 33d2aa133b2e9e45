/** A property that fails is made as small as half a minute allows. Without that, making it small may take hours. */
import fc from "fast-check";

fc.configureGlobal({ interruptAfterTimeLimit: 30_000 });
