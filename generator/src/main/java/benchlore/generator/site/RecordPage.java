package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.MistakenFor;
import benchlore.generator.content.Name;
import benchlore.generator.page.CompareModel;
import benchlore.generator.picture.ContentPictures;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** What the template of a record's page needs. */
final class RecordPage {
  private static final String ROOT = "../";

  private final Library library;
  private final RecordDrawings drawings;
  private final JointDrawings joints;
  private final Markdown markdown;
  private final FactViews views;
  private final TableLinks tables;

  RecordPage(Library library, ContentPictures pictures, JointDrawings joints, TableLinks tables) {
    this.library = library;
    this.drawings = new RecordDrawings(pictures);
    this.joints = joints;
    this.tables = tables;
    this.markdown = new Markdown(library, ROOT);
    this.views = new FactViews(library, markdown, ROOT);
  }

  /** Values for the template {@code record}. */
  Map<String, Object> values(LibraryRecord entry) {
    Map<String, Object> values = new HashMap<>();
    LibraryRecord.Text text = entry.text();
    values.put("entry", entry);
    values.put("root", ROOT);
    values.put("names", shownNames(entry));
    values.put("does", markdown.line(text.does()));
    values.put("looks", markdown.line(text.looks()));
    values.put("use", markdown.block(text.use()));
    values.put("wrong", text.wrong().stream().map(markdown::line).toList());
    values.put("safety", text.safety().stream().map(markdown::line).toList());
    values.put("body", text.body().isEmpty() ? "" : markdown.block(text.body()));
    values.put("mistaken", mistaken(entry));
    values.put("rows", views.rows(entry.facts()));
    values.put("sections", views.sections(entry.facts()));
    values.put("tables", views.tables(entry.facts()));
    values.put("steps", groups(entry.facts(), "steps", "do", "why", "caution"));
    values.put("causes", groups(entry.facts(), "causes", "cause", "sign", "cure", "prevention"));
    values.put("needs", links(entry.facts().list("needs")));
    values.put("related", links(related(entry)));
    values.put("drawings", drawings(entry));
    values.put("goesWith", tables.of(entry));
    return values;
  }

  private List<BitDrawings.Figure> drawings(LibraryRecord entry) {
    List<BitDrawings.Figure> figures = new ArrayList<>(drawings.of(entry));
    figures.addAll(joints.of(entry));
    return figures;
  }

  private static List<String> shownNames(LibraryRecord entry) {
    List<String> names = new ArrayList<>();
    for (Name name : entry.names()) {
      if (!name.misspelt()) {
        boolean plain = name.use().equals("trade");
        String use =
            name.use().length() == 2 ? name.use().toUpperCase(java.util.Locale.ROOT) : name.use();
        names.add(plain ? name.text() : name.text() + " (" + use + ")");
      }
    }
    return names;
  }

  private List<Map<String, String>> mistaken(LibraryRecord entry) {
    List<Map<String, String>> list = new ArrayList<>();
    for (MistakenFor m : entry.mistaken()) {
      LibraryRecord other = library.entries().get(m.id());
      list.add(
          Map.of(
              "id",
              m.id(),
              "title",
              other == null ? m.thing() : other.title(),
              "url",
              other == null ? "" : ROOT + other.url(),
              "compare",
              sideBySide(entry, other),
              "tell",
              markdown.line(m.tell())));
    }
    return list;
  }

  private static String sideBySide(LibraryRecord entry, LibraryRecord other) {
    boolean alike = other != null && other.kind() == entry.kind();
    return alike
        ? ROOT + CompareModel.url(entry.kind()) + "#of=" + entry.id() + "," + other.id()
        : "";
  }

  private List<Map<String, String>> groups(Facts facts, String key, String... fields) {
    List<Map<String, String>> list = new ArrayList<>();
    for (Facts group : facts.groups(key)) {
      Map<String, String> values = new HashMap<>();
      for (String field : fields) {
        String text = group.words(field);
        values.put(field, text.isEmpty() ? "" : markdown.line(text));
      }
      list.add(values);
    }
    return list;
  }

  /** What this record names as related, and whatever names this one. */
  private List<String> related(LibraryRecord entry) {
    List<String> ids = new ArrayList<>(entry.related());
    for (LibraryRecord other : library.entries().values()) {
      if (other.related().contains(entry.id()) && !ids.contains(other.id())) {
        ids.add(other.id());
      }
    }
    return ids;
  }

  private List<LibraryRecord> links(List<String> ids) {
    return ids.stream().map(id -> library.entries().get(id)).toList();
  }
}
