package benchlore.generator.page;

/**
 * A cause of a fault, all of it HTML.
 *
 * @param cause what it is
 * @param sign how to tell; as the others, empty where nothing is written
 * @param cure what to do now
 * @param prevention what to do next time
 */
public record Cause(String cause, String sign, String cure, String prevention) {}
