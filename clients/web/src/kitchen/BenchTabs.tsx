// The benches of one formula, as links: each has an address of its own.
import { addressOf, type Bench, benches } from "./place";

export function BenchTabs({ formula, bench }: { formula: string; bench: Bench }) {
  return (
    <nav class="tabs" aria-label="Benches">
      {benches.map((one) => (
        <a key={one.id} href={addressOf(formula, one.id)} aria-current={one.id === bench ? "page" : undefined}>
          {one.title}
        </a>
      ))}
    </nav>
  );
}
