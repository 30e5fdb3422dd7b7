package benchlore.generator.content;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** The slow steps of loading, so that a test can count them: opening a file and parsing it. */
interface FileReading {
  /** As the files lie on a disk or in a jar. */
  FileReading FROM_DISK = new FileReading() {};

  /** A file whole. */
  default byte[] bytes(Path path) throws IOException {
    return Files.readAllBytes(path);
  }

  /** Parses a record, a plan or another file an author writes. */
  default LoadResult<YamlFile> yaml(String shown, byte[] bytes) {
    return YamlFile.parse(shown, bytes);
  }

  /** Parses a schema. */
  default JsonNode json(byte[] bytes) throws IOException {
    return new ObjectMapper().readTree(bytes);
  }
}
