package sandslurry.design.document;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import sandslurry.fact.Tree;

/**
 * The texts of a design file as a tree.
 *
 * @param node the JSON
 */
record JsonTree(JsonNode node) implements Tree {
  @Override
  public boolean isThere() {
    return !node.isMissingNode() && !node.isNull();
  }

  @Override
  public boolean isRefused() {
    return false;
  }

  @Override
  public boolean isGroup() {
    return node.isObject();
  }

  @Override
  public boolean isList() {
    return node.isArray();
  }

  @Override
  public Optional<String> text() {
    return node.isTextual() || node.isNumber() ? Optional.of(node.asText()) : Optional.empty();
  }

  @Override
  public String shown() {
    return node.isValueNode() && !node.isNull() ? node.asText() : "";
  }

  @Override
  public Tree at(String name) {
    return new JsonTree(node.path(name));
  }

  @Override
  public List<Tree> entries() {
    List<Tree> entries = new ArrayList<>();
    if (node.isArray()) {
      node.forEach(entry -> entries.add(new JsonTree(entry)));
    }
    return entries;
  }

  @Override
  public List<String> names() {
    List<String> names = new ArrayList<>();
    node.fieldNames().forEachRemaining(names::add);
    return names;
  }
}
