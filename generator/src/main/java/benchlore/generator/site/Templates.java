package benchlore.generator.site;

import benchlore.generator.page.Frame;
import benchlore.generator.page.PageModel;
import io.pebbletemplates.pebble.PebbleEngine;
import io.pebbletemplates.pebble.error.LoaderException;
import io.pebbletemplates.pebble.loader.Loader;
import java.io.IOException;
import java.io.Reader;
import java.io.StringReader;
import java.io.StringWriter;
import java.lang.reflect.RecordComponent;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;

/** The Pebble templates of a template folder, which may lie inside a jar. */
final class Templates {
  private final PebbleEngine engine;

  Templates(Path folder) {
    this.engine =
        new PebbleEngine.Builder()
            .loader(new FolderLoader(folder))
            .strictVariables(true)
            .defaultLocale(Locale.ROOT)
            .build();
  }

  /** Renders a page; a variable that neither record has is a programming error. */
  byte[] render(Frame frame, PageModel model) throws IOException {
    Map<String, Object> values = new HashMap<>();
    put(values, frame);
    put(values, (Record) model);
    StringWriter text = new StringWriter();
    engine.getTemplate(model.template()).evaluate(text, values);
    return text.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Adds a record's components, by their names. */
  private static void put(Map<String, Object> values, Record record) {
    for (RecordComponent component : record.getClass().getRecordComponents()) {
      try {
        values.put(component.getName(), component.getAccessor().invoke(record));
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException(component + " can't be read", e);
      }
    }
  }

  private record FolderLoader(Path folder) implements Loader<String> {
    @Override
    public Reader getReader(String name) {
      try {
        return new StringReader(Files.readString(folder.resolve(name + ".peb")));
      } catch (IOException e) {
        throw new LoaderException(e, "template " + name + " can't be read");
      }
    }

    @Override
    public void setCharset(String charset) {
      // Templates are UTF-8.
    }

    @Override
    public void setPrefix(String prefix) {
      // The folder is the prefix.
    }

    @Override
    public void setSuffix(String suffix) {
      // Always .peb.
    }

    @Override
    public String resolveRelativePath(String relative, String anchor) {
      return relative;
    }

    @Override
    public String createCacheKey(String name) {
      return name;
    }

    @Override
    public boolean resourceExists(String name) {
      return Files.exists(folder.resolve(name + ".peb"));
    }
  }
}
