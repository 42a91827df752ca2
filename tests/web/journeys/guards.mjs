// What the pages must not do, and what nobody may reach by hand.
import { equal, holds, journey } from "../journey.mjs";

journey("The policy of a page forbids script and style written into it, and the page has none", {}, async ({ page, base }) => {
  for (const place of ["/", "/kitchen"]) {
    const response = await fetch(new URL(place, base));
    const policy = response.headers.get("content-security-policy");
    for (const rule of ["default-src 'none'", "script-src 'self'", "style-src 'self'", "connect-src 'self'", "frame-ancestors 'none'", "base-uri 'none'"]) {
      holds(policy.includes(rule), `${place} lacks ${rule}`);
    }

    holds(!/unsafe|\*|https?:/.test(policy), `${place} allows too much: ${policy}`);
    equal("no-cache", response.headers.get("cache-control"), `${place} in a cache`);
    const text = await response.text();
    holds(!/<script(?![^>]*\bsrc=)/i.test(text) && !/<style/i.test(text) && !/\son\w+=|\sstyle=/i.test(text), `${place} has script or style in its markup`);
    holds(!/https?:\/\//.test(text), `${place} names another origin`);
  }

  // The browser keeps to it: a script that is written into the page does not run.
  await page.goto("/");
  page.problems.length = 0;
  const ran = await page.evaluate(() => {
    const script = document.createElement("script");
    try {
      script.textContent = "window.ran = true";
    } catch {
      return "refused";
    }

    document.body.append(script);
    return window.ran ?? "refused";
  });
  equal("refused", ran, "a script written into the page");
  page.problems.length = 0;
});

journey("What is hashed by name is kept, packed, and told as what it is", {}, async ({ page, base }) => {
  await page.goto("/");
  await page.getByRole("radio", { name: "Hazelnut tin loaf" }).waitFor();
  const text = await (await fetch(new URL("/", base))).text();
  const files = [...text.matchAll(/(?:src|href)="(\/assets\/[^"]+)"/g)].map((match) => match[1]);
  holds(files.length >= 3, `the page names ${files.length} files`);
  for (const file of files) {
    const response = await fetch(new URL(file, base), { headers: { "accept-encoding": "br" } });
    equal(200, response.status, file);
    equal("public, max-age=31536000, immutable", response.headers.get("cache-control"), file);
    equal("br", response.headers.get("content-encoding"), file);
    equal("nosniff", response.headers.get("x-content-type-options"), file);
    await response.arrayBuffer();
  }

  for (const place of ["/assets/none.js", "/pages/index.html", "/assets/../appsettings.json", "/assets/%2e%2e/%2e%2e/appsettings.json", "/index.html"]) {
    equal(404, (await fetch(new URL(place, base))).status, place);
  }
});

journey("What is not published nobody reaches by a request of his own", {}, async ({ page, call, owner }) => {
  const secret = { displayName: "Unpublished trial loaf", lines: [{ ingredient: "ingredients/almond-meal", grams: 200 }, { ingredient: "ingredients/water", grams: 100 }], slices: 8 };
  equal(200, (await call("POST", "/v1/formulas?formula_id=unpublished-loaf", secret, owner)).status, "saving it with the key");
  const tries = [
    ["GET", "/v1/formulas/unpublished-loaf"],
    ["GET", "/v1/formulas/unpublished-loaf/revisions/1"],
    ["GET", "/v1/formulas/unpublished-loaf/revisions"],
    ["GET", "/v1/formulas:diff?from=formulas/unpublished-loaf&to=formulas/hazelnut-tin-loaf"],
    ...["balance", "variant", "resize", "card", "bake", "rise", "check", "reformulate"].map((verb) => ["POST", `/v1/formulas:${verb}`, { name: "formulas/unpublished-loaf", without: ["egg"], factor: 2, swaps: [{ from: "ingredients/water" }], targets: [{ name: "softer" }] }]),
    ["POST", "/v1/formulas:balance", { name: "formulas/hazelnut-tin-loaf", bandsOf: { name: "formulas/unpublished-loaf" } }],
    ["POST", "/v1/formulas:balance", { name: "formulas/hazelnut-tin-loaf", bandsOf: { name: "formulas/unpublished-loaf" }, typicalOnly: true }],
  ];
  for (const [method, place, body] of tries) {
    const { status, text } = await call(method, place, body);
    holds(status >= 400, `${method} ${place} answers ${status}`);
    holds(!text.includes("Unpublished trial loaf") && !text.includes("almond-meal"), `${method} ${place} tells of it: ${text}`);
  }

  const listed = await call("GET", "/v1/formulas?page_size=1000");
  holds(!listed.text.includes("unpublished-loaf"), "it stands in the list");
  for (const [method, place, body] of [["POST", "/v1/formulas", secret], ["PATCH", "/v1/formulas/hazelnut-tin-loaf", secret], ["DELETE", "/v1/formulas/unpublished-loaf"], ["POST", "/v1/formulas/unpublished-loaf:publish", {}], ["GET", "/v1/formulas/unpublished-loaf/trials"], ["GET", "/v1/learnedFacts"]]) {
    equal(401, (await call(method, place, body)).status, `${method} ${place} without a key`);
  }

  await page.goto("/?formula=unpublished-loaf");
  await page.getByText("It is not there.").waitFor();
  equal(0, await page.getByText("Unpublished trial loaf").count(), "its name on the readers' page");
});
