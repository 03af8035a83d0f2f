package sandslurry.fact;

/**
 * Where a tree is read.
 *
 * @param root the whole of what is read
 * @param pointer address of the place in it
 * @param index place in a list; 0 outside of one
 * @param problems takes what is wrong
 */
record Place(Tree root, String pointer, int index, Problems problems) {
  /** Longer texts are cut where they are repeated in a problem. */
  private static final int LONGEST = 60;

  Place below(String name) {
    // RFC 6901: a name may itself hold the mark between names.
    String step = brief(name).replace("~", "~0").replace("/", "~1");
    return new Place(root, pointer + "/" + step, 0, problems);
  }

  Place entry(int place) {
    return new Place(root, pointer + "/" + place, place, problems);
  }

  /** What this place stands in. */
  Tree around() {
    return root.find(pointer.substring(0, Math.max(0, pointer.lastIndexOf('/'))));
  }

  void problem(Tree value, String message) {
    problems.add(pointer, brief(value.shown()), message);
  }

  static String brief(String text) {
    return text.length() <= LONGEST ? text : text.substring(0, LONGEST - 1) + "\u2026";
  }
}
