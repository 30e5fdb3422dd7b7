package benchlore.generator.site;

import benchlore.generator.content.Facts;
import benchlore.generator.content.Kind;
import benchlore.generator.content.Library;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.content.MistakenFor;
import benchlore.generator.content.Name;
import benchlore.generator.page.CaptionedDrawing;
import benchlore.generator.page.CompareModel;
import benchlore.generator.page.RecordModel;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.EngineData;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** Fills the page of a record. */
final class RecordPage {
  private static final String ROOT = "../";

  private final Library library;
  private final Set<String> pictured;
  private final RecordDrawings drawings;
  private final JointDrawings joints;
  private final Markdown markdown;
  private final FactViews views;
  private final TableLinks tables;

  RecordPage(Content content, Set<String> pictured) {
    this.library = content.library();
    this.pictured = Set.copyOf(pictured);
    this.drawings = new RecordDrawings(content.pictures());
    this.joints = new JointDrawings(content.joints());
    this.tables = new TableLinks(content.tables());
    this.markdown = new Markdown(library, ROOT);
    this.views = new FactViews(library, markdown, ROOT);
  }

  RecordModel model(LibraryRecord entry) {
    List<CaptionedDrawing> all = new ArrayList<>(drawings.page(entry));
    all.addAll(joints.page(entry));
    return new RecordModel(
        entry,
        shownNames(entry),
        text(entry),
        all,
        work(entry),
        views.facts(entry.facts()),
        links(entry),
        pictured);
  }

  private RecordModel.Text text(LibraryRecord entry) {
    LibraryRecord.Text text = entry.text();
    return new RecordModel.Text(
        markdown.line(text.does()),
        markdown.line(text.looks()),
        markdown.block(text.use()),
        text.wrong().stream().map(markdown::line).toList(),
        safety(entry),
        text.body().isEmpty() ? "" : markdown.block(text.body()));
  }

  /** What the record says, and the mask that the engine would ask for. */
  private List<String> safety(LibraryRecord entry) {
    List<String> lines = new ArrayList<>();
    entry.text().safety().forEach(line -> lines.add(markdown.line(line)));
    if (entry.kind() == Kind.FINISHES) {
      EngineData.finish(entry)
          .ifPresent(finish -> MaskLines.of(finish).forEach(l -> lines.add(markdown.line(l))));
    }
    return lines;
  }

  private RecordModel.Work work(LibraryRecord entry) {
    return new RecordModel.Work(
        entry.facts().groups("steps").stream().map(this::step).toList(),
        FactViews.causes(entry.facts(), markdown),
        mistaken(entry));
  }

  private RecordModel.Step step(Facts step) {
    return new RecordModel.Step(
        markdown.line(step.words("do")),
        markdown.line(step.words("why")),
        markdown.line(step.words("caution")));
  }

  private RecordModel.Links links(LibraryRecord entry) {
    return new RecordModel.Links(
        tables.places(entry), entries(entry.facts().list("needs")), entries(related(entry)));
  }

  private static List<String> shownNames(LibraryRecord entry) {
    List<String> names = new ArrayList<>();
    for (Name name : entry.names()) {
      if (!name.misspelt()) {
        boolean plain = name.use().equals("trade");
        String use = name.use().length() == 2 ? name.use().toUpperCase(Locale.ROOT) : name.use();
        names.add(plain ? name.text() : name.text() + " (" + use + ")");
      }
    }
    return names;
  }

  private List<RecordModel.Mistaken> mistaken(LibraryRecord entry) {
    List<RecordModel.Mistaken> list = new ArrayList<>();
    for (MistakenFor m : entry.mistaken()) {
      LibraryRecord other = library.entries().get(m.id());
      list.add(
          new RecordModel.Mistaken(
              m.id(),
              other == null ? m.thing() : other.title(),
              other == null ? "" : ROOT + other.url(),
              sideBySide(entry, other),
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

  private List<LibraryRecord> entries(List<String> ids) {
    return ids.stream().map(id -> library.entries().get(id)).toList();
  }
}
