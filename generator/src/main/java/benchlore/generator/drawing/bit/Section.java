package benchlore.generator.drawing.bit;

import benchlore.generator.drawing.svg.Box;
import java.util.ArrayList;
import java.util.List;

/**
 * A section through work and bit.
 *
 * @param stock what is left of the work
 * @param surface the new surface, open
 * @param removed what was cut away
 * @param templates what a bearing runs on where it does not run on the work
 * @param bit the bit's outline; on an edge only its right half
 * @param window what must be seen
 */
record Section(
    Outline stock,
    Outline surface,
    Outline removed,
    List<Outline> templates,
    List<Outline> bit,
    Box window) {

  static Section of(BitBody body) {
    return switch (body.geometry().shape().cut()) {
      case GROOVE -> groove(body);
      case SURFACE -> surfacing(body);
      case EDGE, WHOLE_EDGE, TRIM -> edge(body);
    };
  }

  private static double stub(BitBody body) {
    return body.highest() + (body.highest() - body.lowest()) * 0.06;
  }

  private static Section groove(BitBody body) {
    Form form = body.form();
    double reach = Math.max(form.removed().maxX(), form.profile().maxX());
    double side = reach + Math.max(reach * 0.5, form.faceMm() * 0.35);
    Outline right = form.contour();
    Outline surface = right.reversed().then(right.mirrored());
    Outline stock =
        Pen.at(-side, form.faceMm())
            .lineTo(-side, form.floorMm())
            .lineTo(side, form.floorMm())
            .lineTo(side, form.faceMm())
            .outline()
            .then(surface)
            .closed();
    Outline metal = body.side(stub(body));
    Outline bit = metal.then(metal.mirrored().reversed()).closed();
    Box window = new Box(-side, form.floorMm(), side, stub(body));
    return new Section(stock, surface, form.removed(), List.of(), List.of(bit), window);
  }

  private static Section edge(BitBody body) {
    Form form = body.form();
    double high = form.faceMm() - form.floorMm();
    double wide = form.removed().maxX() - form.edgeMm();
    double far = form.removed().maxX() + Math.max(wide * 0.5, high * 0.55);
    Outline surface = form.contour();
    Outline stock = surface.thenLineTo(far, form.faceMm()).thenLineTo(far, form.floorMm()).closed();
    Outline metal = body.side(stub(body));
    Outline bit = metal.thenLineTo(0, stub(body)).closed();
    List<Outline> templates = templates(body, far);
    double bottom = Math.min(form.floorMm(), body.lowest());
    double top = Math.max(form.faceMm(), stub(body));
    Box window = new Box(0, bottom, Math.max(far, form.profile().maxX()), top);
    return new Section(stock, surface, form.removed(), templates, List.of(bit), window);
  }

  private static List<Outline> templates(BitBody body, double far) {
    Form form = body.form();
    double r = body.geometry().bearingRadius();
    List<Outline> templates = new ArrayList<>();
    boolean tip = body.geometry().bearingPlace().atTip();
    if (tip && form.floorMm() >= 0) {
      double top = form.floorMm();
      templates.add(Outline.rectangle(r, -body.bearingHeight() * 1.25, far, top));
    }
    boolean rides = body.geometry().bearingPlace().onShank();
    if (rides && (!tip || body.geometry().shape() != BitShape.TRIM)) {
      double top = body.neckTop() + body.bearingHeight();
      templates.add(Outline.rectangle(r, form.faceMm(), far, top));
    }
    return templates;
  }

  private static Section surfacing(BitBody body) {
    double r = body.geometry().maxRadius();
    double depth = body.form().faceMm();
    double side = r * 2.4;
    double floor = -r * 0.6;
    Outline surface = Pen.at(r, depth).lineTo(r, 0).lineTo(-side, 0).outline();
    Outline stock =
        Pen.at(-side, 0)
            .lineTo(-side, floor)
            .lineTo(side, floor)
            .lineTo(side, depth)
            .outline()
            .then(surface)
            .closed();
    Outline metal = body.side(stub(body));
    Outline bit = metal.then(metal.mirrored().reversed()).closed();
    double overlap = r * 1.2;
    Outline before = Outline.rectangle(-r - overlap, 0, r - overlap, body.neckTop());
    Outline removed = Outline.rectangle(-side, 0, r, depth);
    Box window = new Box(-side, floor, side, stub(body));
    return new Section(stock, surface, removed, List.of(), List.of(before, bit), window);
  }
}
