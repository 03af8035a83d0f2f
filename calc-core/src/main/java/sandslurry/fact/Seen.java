package sandslurry.fact;

/**
 * A group as it stands, before or without being read: what conditions of fields look at.
 *
 * @param root the whole to which the group belongs
 * @param around the group in which the group stands
 * @param here the group
 */
public record Seen(Tree root, Tree around, Tree here) {
  /**
   * Whether a field is there.
   *
   * @param field a field of the group
   * @return true when something stands in it
   */
  public boolean has(Field<?> field) {
    return here.at(field.name()).isThere();
  }

  /**
   * Whether something stands beside the group.
   *
   * @param name name of a field of the group around this one
   * @return true when something stands in it
   */
  public boolean beside(String name) {
    return around.at(name).isThere();
  }

  /**
   * Whether something is there in the whole.
   *
   * @param pointer its JSON Pointer
   * @return true when something stands there
   */
  public boolean has(String pointer) {
    return root.find(pointer).isThere();
  }

  /**
   * Whether a choice is made.
   *
   * @param field the field of the choice
   * @param name a name as in files
   * @return true when the field holds that name, in any case
   */
  public boolean is(Field<?> field, String name) {
    return name.equalsIgnoreCase(here.at(field.name()).text().orElse("").strip());
  }

  /**
   * Whether a choice is made in the whole.
   *
   * @param pointer JSON Pointer of the field
   * @param name a name as in files
   * @return true when that name stands there, in any case
   */
  public boolean is(String pointer, String name) {
    return name.equalsIgnoreCase(root.find(pointer).text().orElse("").strip());
  }
}
