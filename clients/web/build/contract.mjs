// Generates the typed client in `obj/contract/` from the protos of the repository. The two files of google.api that they import
// come from the package protobufjs, which carries them; nothing is fetched.
import { execFileSync } from "node:child_process";
import { cpSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { fileURLToPath } from "node:url";

const here = path.resolve(path.dirname(fileURLToPath(import.meta.url)), "..");
const protos = path.join(here, "obj", "contract", "protos");
rmSync(path.join(here, "obj", "contract"), { recursive: true, force: true });
cpSync(path.join(here, "..", "..", "protos", "swapsolver"), path.join(protos, "swapsolver"), { recursive: true });
mkdirSync(path.join(protos, "google", "api"), { recursive: true });
for (const file of ["annotations.proto", "http.proto"]) {
  cpSync(path.join(here, "node_modules", "protobufjs", "google", "api", file), path.join(protos, "google", "api", file));
}

cpSync(path.join(here, "build", "google"), path.join(protos, "google"), { recursive: true });
writeFileSync(path.join(here, "obj", "contract", "buf.yaml"), "version: v2\nmodules:\n  - path: protos\n");
writeFileSync(path.join(here, "obj", "contract", "buf.gen.yaml"), [
  "version: v2",
  "plugins:",
  `  - local: ${JSON.stringify(["node", path.join(here, "node_modules", "@bufbuild", "protoc-gen-es", "bin", "protoc-gen-es")])}`,
  "    out: client",
  "    include_imports: true",
  "    opt: [target=ts, import_extension=none]",
  "",
].join("\n"));
execFileSync(path.join(here, "node_modules", ".bin", "buf"), ["generate"], { cwd: path.join(here, "obj", "contract"), stdio: "inherit" });
