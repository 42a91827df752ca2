// One station of the way from bowl to slice.
import type { ComponentChildren } from "preact";
import { Glyph, type GlyphName } from "./Glyph";

export function Station(props: { of: GlyphName; title: string; id: string; level?: "h2" | "h3"; lead?: ComponentChildren; children: ComponentChildren }) {
  const Title = props.level ?? "h3";
  return (
    <section class={`station station-${props.of}`} aria-labelledby={`${props.id}-title`} id={props.id}>
      <Title id={`${props.id}-title`} class="station-title">
        <Glyph of={props.of} />
        {props.title}
      </Title>
      {props.lead && <p class="lead">{props.lead}</p>}
      {props.children}
    </section>
  );
}
