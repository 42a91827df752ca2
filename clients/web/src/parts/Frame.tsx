// What stands around both pages.
import type { ComponentChildren } from "preact";

export function Frame(props: { page: "reader" | "kitchen"; children: ComponentChildren }) {
  return (
    <>
      <a class="skip" href="#main">
        To the content
      </a>
      <header class="top">
        <p class="house">SwapSolver</p>
        <nav aria-label="Pages">
          <a href="/" aria-current={props.page === "reader" ? "page" : undefined}>
            Readers
          </a>
          <a href="/kitchen" aria-current={props.page === "kitchen" ? "page" : undefined}>
            Kitchen
          </a>
        </nav>
      </header>
      <main id="main" tabIndex={-1}>
        {props.children}
      </main>
      <footer class="foot">
        <p>
          Figures are estimates with ranges. Allergens are told by the facts of ingredients: check the label of every packet, and follow local rules.
          Net carbs are a trade convention and not medical advice.
        </p>
        <p>Larkfield Bakehouse and its formulas are invented.</p>
      </footer>
    </>
  );
}
