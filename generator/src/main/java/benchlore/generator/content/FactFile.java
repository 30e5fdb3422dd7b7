package benchlore.generator.content;

import java.nio.file.Path;

/**
 * A file that is no record of the library, read and checked.
 *
 * @param path where it was read from; its name need not be its id
 * @param id the id written in it; empty where its schema asks for none
 * @param facts what it holds
 * @param text the file as it was written
 */
public record FactFile(Path path, String id, Facts facts, String text) {}
