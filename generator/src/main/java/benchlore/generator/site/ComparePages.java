package benchlore.generator.site;

import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.MistakenFor;
import benchlore.generator.page.FactRow;
import benchlore.generator.page.RecordModel;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Data for comparing records of one kind side by side. */
final class ComparePages {
  private static final String ROOT = "../";

  private final Library library;
  private final Pictures pictures;
  private final Markdown markdown;
  private final FactViews views;

  ComparePages(Library library, Pictures pictures) {
    this.library = library;
    this.pictures = pictures;
    this.markdown = new Markdown(library, ROOT);
    this.views = new FactViews(library, markdown, ROOT);
  }

  /**
   * Every record of a kind: what it looks like and does, its figures, how to tell it from others.
   */
  List<Map<String, Object>> data(Kind kind) {
    List<Map<String, Object>> records = new ArrayList<>();
    for (LibraryRecord entry : library.of(kind)) {
      Map<String, Object> record = new LinkedHashMap<>();
      record.put("id", entry.id());
      record.put("title", entry.title());
      record.put("url", ROOT + entry.url());
      record.put(
          "picture",
          pictures.ids().contains(entry.id()) ? ROOT + "drawings/" + entry.id() + ".svg" : "");
      pictures.sideMm(entry.id()).ifPresent(mm -> record.put("side", mm));
      record.put("rows", rows(entry));
      Map<String, String> tell = new LinkedHashMap<>();
      for (MistakenFor mistaken : entry.mistaken()) {
        if (!mistaken.id().isEmpty()) {
          tell.put(mistaken.id(), markdown.line(mistaken.tell()));
        }
      }
      record.put("tell", tell);
      records.add(record);
    }
    return records;
  }

  private List<List<String>> rows(LibraryRecord entry) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(List.of("What it does", markdown.line(entry.text().does())));
    rows.add(List.of("What it looks like", markdown.line(entry.text().looks())));
    for (FactRow row : views.rows(entry.facts())) {
      rows.add(List.of(row.label(), row.value()));
    }
    for (RecordModel.Section section : views.sections(entry.facts())) {
      rows.add(List.of(section.label(), section.html()));
    }
    return rows;
  }
}
