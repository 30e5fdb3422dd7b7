package benchlore.schedules.air;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Rows of the tables of published figures, by column name. */
final class Published {
  private Published() {}

  /** One row; prints as it stands in the file. */
  record Row(String text, Map<String, String> cells) {
    String text(String column) {
      String cell = cells.get(column);
      if (cell == null) {
        throw new IllegalArgumentException("no column " + column + " in " + text);
      }
      return cell;
    }

    double number(String column) {
      return Double.parseDouble(text(column));
    }

    @Override
    public String toString() {
      return text;
    }
  }

  static Stream<Row> rows(String file) {
    List<String> lines;
    try (InputStream in = Published.class.getResourceAsStream("/published/air/" + file)) {
      lines = new String(in.readAllBytes(), UTF_8).lines().toList();
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    String[] names = lines.get(0).split("[|]", -1);
    return lines.stream().skip(1).map(line -> row(names, line));
  }

  private static Row row(String[] names, String line) {
    String[] parts = line.split("[|]", -1);
    Map<String, String> cells = new LinkedHashMap<>();
    for (int i = 0; i < names.length; i++) {
      cells.put(names[i], parts[i]);
    }
    return new Row(line, cells);
  }
}
