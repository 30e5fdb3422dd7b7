package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/** Which pictures there are and which are asked for: every name has its file, every file a use. */
final class PictureNames {
  private static final String NOT_ASKED = "no record asks for this picture";

  private final ContentFiles files;
  private final Map<String, SortedMap<String, Path>> found;
  private final Map<String, SortedMap<String, Path>> unused = new TreeMap<>();

  private PictureNames(ContentFiles files, Map<String, SortedMap<String, Path>> found) {
    this.files = files;
    this.found = found;
    found.forEach((folder, names) -> unused.put(folder, new TreeMap<>(names)));
  }

  /** The pictures of a content folder. */
  static PictureNames of(ContentFiles files) throws IOException {
    Map<String, SortedMap<String, Path>> found = new TreeMap<>();
    for (String folder : List.of(ContentFiles.SKETCHES, ContentFiles.FAULTS, ContentFiles.TOOLS)) {
      SortedMap<String, Path> names = new TreeMap<>();
      files.pictures(folder).forEach(file -> names.put(ContentFiles.id(file), file));
      found.put(folder, names);
    }
    return new PictureNames(files, found);
  }

  /** Names in records that no picture has, each where it was written. */
  List<Problem> check(List<YamlFile> records) {
    List<Problem> problems = new ArrayList<>();
    for (YamlFile yaml : records) {
      JsonNode sketches = yaml.root().path("sketches");
      for (int i = 0; i < sketches.size(); i++) {
        check(yaml, ContentFiles.SKETCHES, "/sketches/" + i + "/drawing", problems);
      }
      check(yaml, ContentFiles.FAULTS, "/picture", problems);
      if (yaml.root().has("drawn")) {
        String id = yaml.root().path("id").asText();
        unused.get(ContentFiles.TOOLS).remove(id);
        if (!found.get(ContentFiles.TOOLS).containsKey(id)) {
          problems.add(
              yaml.keySpot("/drawn")
                  .problem(
                      "there is no picture of this tool",
                      "Draw it in drawings/tools/" + id + ".svg, or leave `drawn` away."));
        }
      }
    }
    return problems;
  }

  private void check(YamlFile yaml, String folder, String pointer, List<Problem> problems) {
    JsonNode name = yaml.root().at(pointer);
    if (!name.isTextual()) {
      return;
    }
    unused.get(folder).remove(name.asText());
    if (!found.get(folder).containsKey(name.asText())) {
      problems.add(
          yaml.spot(pointer)
              .problem(
                  "`" + name.asText() + "` is no picture in drawings/" + folder,
                  Suggestions.nearest(name.asText(), found.get(folder).keySet())
                      .map(near -> "Did you mean `" + near + "`?")
                      .orElse("Write the name of a file there, or draw it.")));
    }
  }

  /** Pictures named for a tool that is none. */
  List<Problem> ofNoTool(RecordIds ids) {
    List<Problem> problems = new ArrayList<>();
    found
        .get(ContentFiles.TOOLS)
        .forEach(
            (id, file) -> {
              Optional<Kind> kind = ids.kind(id);
              if (kind.isEmpty()) {
                String todo =
                    Suggestions.nearest(id, ids.of(Kind.TOOLS))
                        .map(near -> "Did you mean `" + near + "`?")
                        .orElse("Name the file as the record of the tool.");
                problems.add(problem(file, "`" + id + "` is the id of no tool", todo));
              } else if (kind.get() != Kind.TOOLS) {
                problems.add(
                    problem(
                        file,
                        "`" + id + "` is a record in " + kind.get().folder() + ", no tool",
                        "Name the file as a record in tools."));
              }
            });
    return problems;
  }

  /** Pictures no record asked for, once every record is checked. */
  List<Problem> unused() {
    List<Problem> problems = new ArrayList<>();
    unused.forEach(
        (folder, names) ->
            names.forEach(
                (name, file) ->
                    problems.add(
                        folder.equals(ContentFiles.TOOLS)
                            ? problem(
                                file,
                                "the record of this tool tells no size",
                                "Write `drawn` with `wide` and `high` into tools/"
                                    + name
                                    + ".yaml.")
                            : problem(file, NOT_ASKED, "Name it in a record, or take it away."))));
    return problems;
  }

  private Problem problem(Path file, String what, String todo) {
    return new Problem(new Place(files.shown(file), 1, 1), "", what, todo);
  }
}
