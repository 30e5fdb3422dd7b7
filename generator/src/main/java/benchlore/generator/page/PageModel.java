package benchlore.generator.page;

/** What one template is given: a record whose components are the template's variables. */
public interface PageModel {
  /** Name of the template, without its ending. */
  String template();
}
