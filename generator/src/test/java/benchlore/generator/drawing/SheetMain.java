package benchlore.generator.drawing;

import benchlore.generator.drawing.bit.BitGeometry;
import benchlore.generator.drawing.bit.Bits;
import benchlore.generator.drawing.bit.SampleBits;
import benchlore.generator.drawing.joint.JointDrawing;
import benchlore.generator.drawing.joint.JointForm;
import benchlore.generator.drawing.joint.SampleJoints;
import benchlore.generator.drawing.surface.BoardCut;
import benchlore.generator.drawing.surface.Surfaces;
import benchlore.generator.drawing.svg.Num;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;

/** Writes a page with every drawing to the folder given, for looking at. */
final class SheetMain {
  private SheetMain() {}

  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    String css = Files.readString(Path.of(args[1]), StandardCharsets.UTF_8);
    Files.writeString(
        folder.resolve("sheet-light.html"), sheet(css, false), StandardCharsets.UTF_8);
    Files.writeString(folder.resolve("sheet-dark.html"), sheet(css, true), StandardCharsets.UTF_8);
  }

  private static String sheet(String css, boolean dark) {
    String used = dark ? css.replace("(prefers-color-scheme: dark)", "all") : css;
    StringBuilder page = new StringBuilder("<!doctype html><meta charset=utf-8><style>");
    page.append(used);
    page.append("body{background:var(--drw-paper);color:var(--drw-ink);font:13px sans-serif}");
    page.append("main{display:grid;grid-template-columns:repeat(4,320px);gap:12px}");
    page.append("</style><p>");
    for (BitGeometry bit : SampleBits.all().values()) {
      page.append("<span style='display:inline-block'>").append(Bits.glyph(bit));
      page.append("</span>");
    }
    page.append("</p><main>");
    for (Map.Entry<String, BitGeometry> e : SampleBits.all().entrySet()) {
      String name = e.getKey();
      page.append("<div>").append(name).append(Bits.bit(e.getValue(), name, "b-" + name));
      page.append("</div><div>").append(Bits.cut(e.getValue(), name + " cut", "c-" + name));
      page.append("</div>");
    }
    for (BoardCut cut : BoardCut.values()) {
      page.append(Surfaces.board(cut, cut.word(), "g-" + cut.word()));
    }
    for (double micron : new double[] {425, 125, 35, 10}) {
      page.append(Surfaces.grit(micron, "grit", "m-" + Num.of(micron)));
    }
    for (JointForm form : JointForm.values()) {
      String name = form.word();
      page.append("<div>").append(name);
      page.append(JointDrawing.draw(form, SampleJoints.sizes(form), name, "j-" + name));
      page.append("</div>");
    }
    return page.append("</main>").toString();
  }
}
