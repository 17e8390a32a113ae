// Loaded before the quick tests: from here on this process imports TypeScript as it is.
import { register } from "node:module";

register("./load.mjs", import.meta.url);
