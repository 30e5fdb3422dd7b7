package benchlore.generator.drawing.svg;

import benchlore.schedules.time.Date;

/** Writes SVG: classes for looks, attributes for geometry only. */
public final class Svg {

  private final StringBuilder out = new StringBuilder();

  private Svg() {}

  /** A drawing that stands alone and is read out by its title and description. */
  public static Svg titled(double width, double height, Label label) {
    return titledHtml(width, height, label, escape(label.description()));
  }

  /** The same for a page alone: the description is HTML, so that days in it may be rewritten. */
  public static Svg titledHtml(double width, double height, Label label, String description) {
    Svg svg = new Svg();
    String t = label.idPrefix() + "-t";
    String d = label.idPrefix() + "-d";
    svg.out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drw\" viewBox=\"0 0 ");
    svg.out.append(Num.of(width)).append(' ').append(Num.of(height));
    svg.out.append("\" role=\"img\" aria-labelledby=\"").append(t).append(' ').append(d);
    svg.out.append("\"><title id=\"").append(t).append("\">").append(escape(label.title()));
    svg.out.append("</title><desc id=\"").append(d).append("\">");
    svg.out.append(description).append("</desc>");
    return svg;
  }

  /** A small drawing beside its name, passed over by screen readers. */
  public static Svg decorative(double side) {
    Svg svg = new Svg();
    String size = Num.of(side);
    svg.out.append(
        "<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"drw drw-glyph\" viewBox=\"0 0 ");
    svg.out.append(size).append(' ').append(size);
    svg.out.append("\" width=\"").append(size).append("\" height=\"").append(size);
    svg.out.append("\" aria-hidden=\"true\">");
    return svg;
  }

  /** A path; {@code d} is path data in page units. */
  public Svg path(String cssClass, String d) {
    out.append("<path class=\"").append(cssClass).append("\" d=\"").append(d).append("\"/>");
    return this;
  }

  /** A field with holes: what lies inside an even number of its lines is left open. */
  public Svg pierced(String cssClass, String d) {
    out.append("<path class=\"").append(cssClass).append("\" fill-rule=\"evenodd\" d=\"");
    out.append(d).append("\"/>");
    return this;
  }

  /** A straight line. */
  public Svg line(String cssClass, double x0, double y0, double x1, double y1) {
    return path(cssClass, "M" + pair(x0, y0) + "L" + pair(x1, y1));
  }

  /** An upright rectangle from its upper left corner. */
  public Svg rect(String cssClass, double x, double y, double width, double height) {
    out.append("<rect class=\"").append(cssClass);
    out.append("\" x=\"").append(Num.of(x)).append("\" y=\"").append(Num.of(y));
    out.append("\" width=\"").append(Num.of(width)).append("\" height=\"");
    out.append(Num.of(height)).append("\"/>");
    return this;
  }

  /** A circle. */
  public Svg circle(String cssClass, double x, double y, double radius) {
    out.append("<circle class=\"").append(cssClass);
    out.append("\" cx=\"").append(Num.of(x)).append("\" cy=\"").append(Num.of(y));
    out.append("\" r=\"").append(Num.of(radius)).append("\"/>");
    return this;
  }

  /** Words; {@code anchor} is start, middle or end. */
  public Svg text(String anchor, double x, double y, String words) {
    out.append("<text class=\"drw-text\"");
    place(anchor, x, y);
    out.append(escape(words)).append("</text>");
    return this;
  }

  /** A day, written out; a page's script may put it the reader's own way. */
  public Svg day(String anchor, double x, double y, Date day) {
    out.append("<text class=\"drw-text\" data-at=\"").append(day).append("\" data-as=\"short\"");
    place(anchor, x, y);
    out.append(day.shortWords()).append("</text>");
    return this;
  }

  /** The same in a description. */
  public static String dayHtml(Date day) {
    return "<time datetime=\"" + day + "\" data-as=\"short\">" + day.shortWords() + "</time>";
  }

  /** A step's number, light on a dark block. */
  public Svg number(double x, double y, String number) {
    out.append("<text class=\"lad-number\"");
    place("middle", x, y);
    out.append(number).append("</text>");
    return this;
  }

  /** A figure, with what a script shows to a reader of other units. */
  public Svg figure(String anchor, double x, double y, Measure measure) {
    if (!measure.isFigure()) {
      return text(anchor, x, y, measure.text());
    }
    out.append("<text class=\"dim drw-text drw-value\"");
    if (!measure.imperial().equals(measure.text())) {
      out.append(" data-imperial=\"").append(escape(measure.imperial())).append('"');
    }
    place(anchor, x, y);
    out.append(escape(measure.text())).append("</text>");
    return this;
  }

  private void place(String anchor, double x, double y) {
    out.append(" text-anchor=\"").append(anchor).append("\" x=\"").append(Num.of(x));
    out.append("\" y=\"").append(Num.of(y)).append("\">");
  }

  /** Starts a group shown only inside a closed path; ends with {@link #endGroup}. */
  public Svg clippedGroup(String id, String d) {
    out.append("<clipPath id=\"").append(id).append("\"><path d=\"").append(d);
    out.append("\"/></clipPath><g clip-path=\"url(#").append(id).append(")\">");
    return this;
  }

  /** Ends a group started with {@link #clippedGroup}. */
  public Svg endGroup() {
    out.append("</g>");
    return this;
  }

  /** Adds markup as it stands: what it says must be well-formed and named as all drawings are. */
  public Svg markup(String xml) {
    out.append(xml);
    return this;
  }

  /** The whole text; nothing may be added after it. */
  public String end() {
    return out + "</svg>";
  }

  /** Two coordinates as path data writes them. */
  public static String pair(double x, double y) {
    return Num.of(x) + " " + Num.of(y);
  }

  /** Text as markup may hold it, between tags and in quotes. */
  public static String escape(String text) {
    return text.replace("&", "&amp;")
        .replace("<", "&lt;")
        .replace(">", "&gt;")
        .replace("\"", "&quot;");
  }
}
