package benchlore.generator.site;

import benchlore.generator.compatibility.Table;
import benchlore.generator.content.Kind;
import benchlore.generator.content.LibraryRecord;
import benchlore.generator.export.PlannerData;
import benchlore.generator.page.CompareModel;
import benchlore.generator.page.EdgeProfilesModel;
import benchlore.generator.page.FaultsModel;
import benchlore.generator.page.FinishOverFinishModel;
import benchlore.generator.page.Frame;
import benchlore.generator.page.FrontModel;
import benchlore.generator.page.JointsModel;
import benchlore.generator.page.KeyModel;
import benchlore.generator.page.KindModel;
import benchlore.generator.page.PageModel;
import benchlore.generator.page.PlannersModel;
import benchlore.generator.page.PlansModel;
import benchlore.generator.page.SheensModel;
import benchlore.generator.page.SourcesModel;
import benchlore.generator.page.TablesModel;
import benchlore.generator.pagedata.ScriptData;
import benchlore.generator.planning.Content;
import benchlore.generator.planning.Planned;
import benchlore.generator.search.FinderData;
import benchlore.schedules.answer.Answer;
import benchlore.schedules.compatibility.OverRow;
import benchlore.schedules.present.PlanCalendar;
import benchlore.schedules.present.UnitSystem;
import benchlore.schedules.project.ProjectPlan;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Makes every file of the site, in memory: the same input gives the same bytes. */
public final class Site {
  private static final List<String> COPIED = List.of("css", "js", "vendor");

  private final Content content;
  private final Path template;
  private final Templates templates;
  private final Pictures pictures;
  private final SortedMap<String, byte[]> files = new TreeMap<>();

  private Site(Content content, Path template) throws IOException {
    this.content = content;
    this.template = template;
    this.templates = new Templates(template.resolve("pages"));
    String looks = Files.readString(template.resolve("css/drawing.css"));
    this.pictures = new Pictures(content.library(), content.pictures(), new PictureStyle(looks));
  }

  /**
   * Renders the site.
   *
   * @param content what it is made of
   * @param template the template folder
   * @return bytes by path, relative to the site's folder, with forward slashes
   * @throws IOException if a template can't be read
   */
  public static SortedMap<String, byte[]> render(Content content, Path template)
      throws IOException {
    Site site = new Site(content, template);
    site.copyAssets();
    site.frontPage();
    site.kindPages();
    site.recordPages();
    site.comparePages();
    site.keyPages();
    FaultsPage faults = new FaultsPage(content.library(), site.pictures.ids());
    site.page(FaultsModel.URL, faults.model());
    site.tablePages();
    site.planPages();
    site.plannerPages();
    site.page("sources.html", SourcesModel.of(content));
    String finder = FinderData.script(content.library(), content.lexicon(), site.pictures.ids());
    site.files.put("js/finder-data.js", finder.getBytes(StandardCharsets.UTF_8));
    String planner = PlannerData.script(content);
    site.files.put("js/planner-data.js", planner.getBytes(StandardCharsets.UTF_8));
    return site.files;
  }

  private void copyAssets() throws IOException {
    for (String folder : COPIED) {
      Path from = template.resolve(folder);
      // The scripts are made late in a build; a template without them has none.
      if (!Files.isDirectory(from)) {
        continue;
      }
      try (Stream<Path> found = Files.list(from)) {
        for (Path file : found.filter(Files::isRegularFile).sorted().toList()) {
          String name = folder + "/" + from.relativize(file).toString().replace('\\', '/');
          files.put(name, Files.readAllBytes(file));
        }
      }
    }
  }

  private void frontPage() throws IOException {
    List<FrontModel.Shelf> shelves = new ArrayList<>();
    for (Kind kind : Kind.values()) {
      shelves.add(new FrontModel.Shelf(kind, content.library().of(kind).size()));
    }
    List<TablesModel.Card> tables = TablePage.cards(content.tables());
    page("index.html", new FrontModel(planners(), planCards(), tables, shelves));
  }

  private void kindPages() throws IOException {
    for (Kind kind : Kind.values()) {
      KindModel list = KindModel.of(kind, content.library(), pictures.ids());
      page(kind.folder() + "/index.html", list);
    }
  }

  private void recordPages() throws IOException {
    RecordPage record = new RecordPage(content, pictures.ids());
    for (LibraryRecord entry : content.library().entries().values()) {
      page(entry.url(), record.model(entry));
    }
    for (String id : pictures.ids()) {
      files.put("drawings/" + id + ".svg", pictures.file(id));
    }
  }

  private void comparePages() throws IOException {
    ComparePages compare = new ComparePages(content.library(), pictures);
    for (Kind kind : Kind.values()) {
      page(CompareModel.url(kind), new CompareModel(kind));
      String script = ScriptData.script("benchloreCompare", compare.data(kind));
      files.put("js/compare-" + kind.folder() + ".js", script.getBytes(StandardCharsets.UTF_8));
    }
  }

  private void keyPages() throws IOException {
    for (Kind kind : Kind.values()) {
      Optional<KeyModel> key = KeyModel.of(kind, content.library().of(kind), pictures.ids());
      if (key.isPresent()) {
        page(KeyModel.url(kind), key.get());
      }
    }
  }

  private void tablePages() throws IOException {
    FinishOverPage over = new FinishOverPage(content.library(), OverRow.rules(content.over()));
    page(FinishOverFinishModel.URL, over.model());
    for (Table table : content.tables()) {
      for (TablePage page : TablePage.both(content.library(), table)) {
        page(page.url(), page.model());
      }
      TableWholePage whole = new TableWholePage(table);
      page(whole.url(), whole.model());
    }
    List<Table> tables = content.tables();
    page("tables/index.html", new TablesModel(TablePage.cards(tables), TablePage.rules(tables)));
    JointDrawings drawings = new JointDrawings(content.joints());
    page(JointsModel.URL, new JointsPage(content.library(), drawings).model());
    EdgesPage edges = new EdgesPage(content.library(), content.edges());
    page(EdgeProfilesModel.URL, edges.model());
    page(SheensModel.URL, new SheensPage(content.library()).model());
  }

  private void planPages() throws IOException {
    page("plans/index.html", new PlansModel(planCards()));
    for (Planned planned : content.plans()) {
      PlanPage plan = new PlanPage(content.library(), planned);
      page(plan.url(), plan.model());
      byte[] text = planned.text().getBytes(StandardCharsets.UTF_8);
      files.put("plans/" + planned.id() + ".yaml", text);
      if (planned.answer() instanceof Answer.Given<ProjectPlan> given) {
        files.put("plans/" + planned.id() + ".ics", calendar(planned, given.value()));
      }
    }
  }

  /** Stamped with the plan's first moment, so that the same plan gives the same bytes. */
  private static byte[] calendar(Planned planned, ProjectPlan plan) {
    PlanCalendar.Head head =
        new PlanCalendar.Head(planned.id(), planned.title(), plan.start(), UnitSystem.METRIC);
    return PlanCalendar.render(head, plan).getBytes(StandardCharsets.UTF_8);
  }

  private List<PlansModel.Card> planCards() {
    return content.plans().stream()
        .map(planned -> new PlanPage(content.library(), planned).card())
        .toList();
  }

  /** None without a shop: a planner's form starts as the shop is. */
  private List<PlannersModel.Planner> planners() {
    return content.shop().isPresent() ? PlannerPages.all() : List.of();
  }

  private void plannerPages() throws IOException {
    if (planners().isEmpty()) {
      return;
    }
    PlannerPages planners = new PlannerPages(content.library(), content.shop().get());
    List<Map<String, String>> begun = new ArrayList<>();
    for (Planned planned : content.plans()) {
      // What is written out keeps its order: that of Map.of differs from run to run.
      Map<String, String> file = new LinkedHashMap<>();
      file.put("id", planned.id());
      file.put("title", planned.title());
      file.put("text", planned.text());
      begun.add(file);
    }
    String script = ScriptData.script("benchlorePlanFiles", begun);
    files.put("js/plan-files.js", script.getBytes(StandardCharsets.UTF_8));
    page(PlannerPages.FOLDER + "index.html", new PlannersModel(PlannerPages.all()));
    for (PlannersModel.Planner planner : PlannerPages.all()) {
      page(PlannerPages.FOLDER + planner.url(), planners.model(planner));
    }
  }

  private void page(String path, PageModel model) throws IOException {
    Frame frame = Frame.of(path, !planners().isEmpty());
    files.put(path, templates.render(frame, model));
  }
}
