// Packs every built file once, so that the service only hands it out.
import { readFileSync, readdirSync, writeFileSync } from "node:fs";
import path from "node:path";
import { brotliCompressSync, constants, gzipSync } from "node:zlib";

const dist = path.resolve(import.meta.dirname, "..", "dist");
for (const file of readdirSync(dist, { recursive: true }).filter((name) => /\.(html|js|css|svg)$/.test(name))) {
  const bytes = readFileSync(path.join(dist, file));
  writeFileSync(path.join(dist, `${file}.br`), brotliCompressSync(bytes, { params: { [constants.BROTLI_PARAM_QUALITY]: 11 } }));
  writeFileSync(path.join(dist, `${file}.gz`), gzipSync(bytes, { level: 9 }));
}
