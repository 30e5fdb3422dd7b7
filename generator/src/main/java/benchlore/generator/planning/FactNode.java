package benchlore.generator.planning;

import benchlore.generator.content.Fact;
import benchlore.generator.content.Problem;
import benchlore.generator.content.SourceLocation;
import benchlore.schedules.exchange.Node;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A checked fact of a YAML file as the engine reads it. Numbers stay as they were written, which
 * the reader of plan files takes as well.
 */
final class FactNode implements Node {
  private final Optional<Fact> fact;

  private FactNode(Optional<Fact> fact) {
    this.fact = fact;
  }

  static FactNode of(Fact fact) {
    return new FactNode(Optional.of(fact));
  }

  /** A problem at the end of a path, or as near to it as the file goes. */
  static Problem problem(Fact root, List<String> path, String what, String todo) {
    Fact last = root;
    for (String key : path) {
      last = of(last).child(key).orElse(last);
    }
    SourceLocation spot = last.spot();
    return spot.problem(what, todo);
  }

  private Optional<Fact> child(String key) {
    if (fact.orElse(null) instanceof Fact.Group group) {
      return Optional.ofNullable(group.facts().get(key));
    }
    return fact.orElse(null) instanceof Fact.Items items
        ? Optional.of(items.items().get(Integer.parseInt(key)))
        : Optional.empty();
  }

  @Override
  public Kind kind() {
    Fact value = fact.orElse(null);
    if (value instanceof Fact.Words) {
      return Kind.TEXT;
    }
    if (value instanceof Fact.Flag) {
      return Kind.FLAG;
    }
    if (value instanceof Fact.Items) {
      return Kind.LIST;
    }
    return value instanceof Fact.Group ? Kind.OBJECT : Kind.ABSENT;
  }

  @Override
  public boolean flag() {
    return ((Fact.Flag) fact.orElseThrow()).yes();
  }

  @Override
  public double number() {
    throw new IllegalStateException("a number of a file is kept as it was written");
  }

  @Override
  public String text() {
    return ((Fact.Words) fact.orElseThrow()).text();
  }

  @Override
  public int size() {
    return ((Fact.Items) fact.orElseThrow()).items().size();
  }

  @Override
  public Node item(int index) {
    return of(((Fact.Items) fact.orElseThrow()).items().get(index));
  }

  @Override
  public Node field(String key) {
    return new FactNode(child(key));
  }

  @Override
  public List<String> keys() {
    Map<String, Fact> facts = ((Fact.Group) fact.orElseThrow()).facts();
    return List.copyOf(facts.keySet());
  }
}
