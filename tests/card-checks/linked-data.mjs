// Judges one document of linked data: whether schema.org knows its types and properties (as the package schema-dts has them,
// made of the vocabulary itself), and whether a JSON-LD processor expands and compacts it without loss.
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { isDeepStrictEqual } from "node:util";
import jsonld from "jsonld";

const require = createRequire(import.meta.url);
const held = JSON.parse(readFileSync(new URL("./context.json", import.meta.url), "utf8"));
const types = readTypes(readFileSync(require.resolve("schema-dts").replace(/schema\.js$/, "schema.d.ts"), "utf8"));

function readTypes(text) {
  const known = new Map();
  for (const [, name, parents, body] of text.matchAll(/interface (\w+)Base(?: extends ([^{]+))? \{([\s\S]*?)\n\}/g)) {
    known.set(name, {
      parents: (parents ?? "").split(",").map((parent) => parent.trim().replace(/^Partial<(.*)>$/, "$1")).filter((parent) => parent.endsWith("Base")).map((parent) => parent.slice(0, -4)),
      properties: new Map([...body.matchAll(/^ {4}"(\w+)"\?: ([^\n]+);$/gm)].map(([, property, holds]) => [property, holds])),
    });
  }

  // A type that adds no property of its own stands as its leaf only.
  for (const [, name, parent] of text.matchAll(/export interface (\w+)Leaf extends (\w+)Base \{/g)) {
    if (!known.has(name)) {
      known.set(name, { parents: [parent], properties: new Map() });
    }
  }

  return known;
}

function propertyOf(type, property) {
  const known = types.get(type);
  return known && (known.properties.get(property) ?? known.parents.map((parent) => propertyOf(parent, property)).find(Boolean));
}

function unknown(node, path, problems) {
  if (Array.isArray(node)) {
    node.forEach((part, place) => unknown(part, `${path}[${place}]`, problems));
  } else if (node && typeof node === "object") {
    const type = node["@type"];
    if (!types.has(type)) {
      problems.push(`${path}: schema.org has no type ${type}`);
    }

    for (const [property, value] of Object.entries(node).filter(([name]) => !name.startsWith("@"))) {
      const holds = propertyOf(type, property);
      if (!holds) {
        problems.push(`${path}.${property}: ${type} has no such property`);
      } else {
        const parts = [value].flat();
        for (const part of parts.filter((one) => one && typeof one === "object")) {
          if (!fits(part["@type"], holds)) {
            problems.push(`${path}.${property}: ${part["@type"]} is none of ${holds}`);
          }
        }
      }

      unknown(value, `${path}.${property}`, problems);
    }
  }

  return problems;
}

/** Whether a property that holds these types holds one of that type or of what it is a kind of. */
function fits(type, holds) {
  const seen = new Set();
  const walk = (name) => !seen.has(name) && seen.add(name) && (new RegExp(`\\b${name}\\b`).test(holds) || (types.get(name)?.parents ?? []).some(walk));
  return walk(type);
}

async function documentLoader(url) {
  if (/^https?:\/\/schema\.org\/?$/.test(url)) {
    return { contextUrl: null, documentUrl: url, document: { "@context": held["@context"] } };
  }

  throw new Error(`${url} is not held here`);
}

export async function judgeLinkedData(document) {
  const expanded = await jsonld.expand(document, { documentLoader });
  const compacted = await jsonld.compact(expanded, "https://schema.org", { documentLoader, compactArrays: true });
  const quads = await jsonld.toRDF(expanded, { documentLoader });
  return {
    unknown: unknown(document, "$", []),
    lost: isDeepStrictEqual(plain(document), plain(compacted)) ? [] : ["what was compacted is not what was expanded"],
    statements: quads.length,
    types: types.size,
  };
}

/** Without its context; 'type' and '@type' are one, and a list of one is that one. */
function plain(node) {
  if (Array.isArray(node)) {
    return node.length === 1 ? plain(node[0]) : node.map(plain);
  }

  return node && typeof node === "object"
    ? Object.fromEntries(Object.entries(node).filter(([name]) => name !== "@context").map(([name, value]) => [name === "@type" ? "type" : name, plain(value)]).sort(([one], [other]) => (one < other ? -1 : 1)))
    : node;
}
