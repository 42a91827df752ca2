import path from "node:path";
import { defineConfig } from "vite";

export default defineConfig({
  resolve: { alias: { contract: path.resolve(import.meta.dirname, "obj/contract/client/swapsolver/v1"), kitchen_words: path.resolve(import.meta.dirname, "obj/contract/client/kitchen_words.ts"), rpc: path.resolve(import.meta.dirname, "obj/contract/client/google/rpc") } },
  oxc: { jsx: { runtime: "automatic", importSource: "preact" } },
  build: {
    target: "es2022",
    modulePreload: { polyfill: false },
    // No picture or font becomes a data: address; the policy of the pages has no place for one.
    assetsInlineLimit: 0,
    rolldownOptions: { input: { index: "index.html", kitchen: "kitchen.html" } },
  },
});
