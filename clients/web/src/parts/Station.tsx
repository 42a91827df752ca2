// One station of the way from bowl to slice.
import type { ComponentChildren } from "preact";
import { Glyph, type GlyphName } from "./Glyph";

export function Station(props: { of: GlyphName; title: string; id: string; lead?: ComponentChildren; children: ComponentChildren }) {
  return (
    <section class={`station station-${props.of}`} aria-labelledby={`${props.id}-title`} id={props.id}>
      <h3 id={`${props.id}-title`}>
        <Glyph of={props.of} />
        {props.title}
      </h3>
      {props.lead && <p class="lead">{props.lead}</p>}
      {props.children}
    </section>
  );
}
