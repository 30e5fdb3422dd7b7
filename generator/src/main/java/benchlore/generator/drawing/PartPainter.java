package benchlore.generator.drawing;

import java.util.List;

/** Draws a tool's parts onto a page. */
final class PartPainter {
  private final Svg svg;
  private final Affine page;
  private final double scale;

  PartPainter(Svg svg, Affine page, double scale) {
    this.svg = svg;
    this.page = page;
    this.scale = scale;
  }

  void paint(Silhouette.Part part) {
    Shape.Ink ink = part.shape().ink(scale);
    String css = part.material().css();
    if (!ink.areas().isEmpty()) {
      boolean teeth = part.shape().stroke() == Shape.Stroke.TEETH;
      String fill = teeth ? css + " drw-plain" : css;
      String d = path(ink.areas());
      if (part.holes().isPresent()) {
        svg.pierced(fill, d + path(part.holes().get().ink(scale).areas()));
      } else {
        svg.path(fill, d);
      }
    }
    if (!ink.strokes().isEmpty()) {
      String line =
          switch (part.shape().stroke()) {
            case OWN -> css;
            case TEETH -> "drw-teeth";
            case THIN -> "drw-thin";
          };
      svg.path(line, path(ink.strokes()));
    }
  }

  private String path(List<Trace> traces) {
    StringBuilder d = new StringBuilder();
    traces.forEach(trace -> d.append(trace.path(page)));
    return d.toString();
  }
}
