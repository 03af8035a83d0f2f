package sandslurry.fact;

import java.util.List;
import java.util.Optional;

/** Texts as they were typed: a group of named trees, a list of trees, or one text. */
public interface Tree {
  /**
   * Whether something stands here.
   *
   * @return false for what is absent or null
   */
  boolean isThere();

  /**
   * Whether what stands here was refused before the reading, and that is told already.
   *
   * @return true when nothing more is to be said of it
   */
  boolean isRefused();

  /**
   * Whether this is a group of named fields.
   *
   * @return true for a group
   */
  boolean isGroup();

  /**
   * Whether this is a list.
   *
   * @return true for a list
   */
  boolean isList();

  /**
   * The text of a text or number.
   *
   * @return the text; empty for anything else
   */
  Optional<String> text();

  /**
   * What is shown of this in a problem.
   *
   * @return the text of a single value; empty for a group or list
   */
  String shown();

  /**
   * What has a name in this group.
   *
   * @param name the name
   * @return the tree there, absent if this is no group or has no such name
   */
  Tree at(String name);

  /**
   * The entries of a list.
   *
   * @return the entries in their order; none if this is no list
   */
  List<Tree> entries();

  /**
   * The names in a group.
   *
   * @return the names in their order; none if this is no group
   */
  List<String> names();

  /**
   * What stands at an address below this.
   *
   * @param pointer a JSON Pointer (RFC 6901)
   * @return the tree there, absent if there is none
   */
  default Tree find(String pointer) {
    Tree tree = this;
    if (pointer.isEmpty()) {
      return tree;
    }
    for (String name : pointer.substring(1).split("/", -1)) {
      List<Tree> entries = tree.entries();
      boolean index = name.matches("\\d{1,6}") && Integer.parseInt(name) < entries.size();
      tree =
          index
              ? entries.get(Integer.parseInt(name))
              : tree.at(name.replace("~1", "/").replace("~0", "~"));
    }
    return tree;
  }
}
